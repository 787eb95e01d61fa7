/**
 * The prediction in a sentence or two: what the live region announces.
 *
 * @param {import('./predict.mjs').Prediction} prediction
 */
export function newsOf({ points, stop }) {
  const places = points.map(({ mL, pH }) => `${mL.toFixed(2)} mL (pH ${pH.toFixed(2)})`);
  const found = places.length === 0 ? 'No equivalence point.' : `Equivalence at ${places.join(' and ')}.`;
  const call = stop?.rows[0];
  if (!stop || !call) return found;
  return `${found} With ${stop.name}, stop at ${call.colour.name}, ${call.mL.toFixed(2)} mL.`;
}
