// What a sweep is for: between which pH the curves lie at each volume. Nothing else is kept, however many curves there are.
import { volumes } from './curves.mjs';

export function newEnvelope() {
  const lowest = new Float64Array(volumes.length).fill(Infinity);
  const highest = new Float64Array(volumes.length).fill(-Infinity);
  return {
    take({ count, pHs }) {
      pHs.forEach((pH, row) => {
        const v = Math.floor(row / count);
        lowest[v] = Math.min(lowest[v], pH);
        highest[v] = Math.max(highest[v], pH);
      });
    },
    lines: () =>
      [0, 10, 18, 30, 36, 45].map(
        (mL) => `${mL} mL: pH ${lowest[2 * mL].toFixed(2)} to ${highest[2 * mL].toFixed(2)}`,
      ),
  };
}
