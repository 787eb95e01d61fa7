import { entryOf } from '../entry-of.js';
import { inWords } from '../in-words.js';

/** What a column is called, with its unit, and to how many decimals it is usually read. */
interface Known {
  readonly heading: string;
  readonly decimals?: number;
}

/**
 * The keys of results, with the units that they stand for. A burette of 50 mL is read to 0.01 mL, a probe to 0.01: common
 * practice. What has no decimals here spans decades, and is printed to four significant digits.
 */
const known: Readonly<Record<string, Known>> = {
  mL: { heading: 'volume, mL', decimals: 2 },
  added: { heading: 'added, mL', decimals: 2 },
  pH: { heading: 'pH', decimals: 2 },
  pcH: { heading: 'pcH', decimals: 2 },
  slope: { heading: 'slope dpH/dV, per mL', decimals: 3 },
  grams: { heading: 'mass, g' },
  mmol: { heading: 'amount, mmol' },
  molar: { heading: 'concentration, mol/L' },
  activity: { heading: 'activity, mol/L' },
  capacity: { heading: 'capacity, mol/L per pH unit' },
  ionicStrength: { heading: 'ionic strength, mol/L' },
  water: { heading: 'water, pH', decimals: 2 },
  beside: { heading: 'beside, pH', decimals: 2 },
  from: { heading: 'from' },
  to: { heading: 'to' },
  percent: { heading: 'percent', decimals: 2 },
  celsius: { heading: 'temperature, °C', decimals: 1 },
  seconds: { heading: 'time, s', decimals: 1 },
  mV: { heading: 'potential, mV', decimals: 1 },
};

/** The same of a key inside another, where the key alone does not tell the unit. */
const knownInside: Readonly<Record<string, Known>> = {
  'change.from': { heading: 'change from, mL', decimals: 2 },
  'change.to': { heading: 'change to, mL', decimals: 2 },
  'transition.from': { heading: 'range from, pH', decimals: 1 },
  'transition.to': { heading: 'range to, pH', decimals: 1 },
  'useful.from': { heading: 'useful from, pH', decimals: 2 },
  'useful.to': { heading: 'useful to, pH', decimals: 2 },
};

/** The heading of a column, with its unit: `endpoint: volume, mL` of `endpoint.mL`. @internal */
export function headingOf(path: string): string {
  const inside = entryOf(knownInside, path);
  if (inside) return inside.heading;
  const keys = path.split('.');
  const number = keys.length > 1 && /^\d+$/.test(keys.at(-1) ?? '') ? ` (${Number(keys.pop()) + 1})` : '';
  const last = keys.pop() ?? '';
  const before = keys.map((key) => `${inWords(key)}: `).join('');
  return `${before}${entryOf(known, last)?.heading ?? inWords(last)}${number}`;
}

/** The decimals of a column; undefined where it spans decades, or is not known. @internal */
export function usualDecimals(path: string): number | undefined {
  const last =
    path
      .replace(/\.\d+$/, '')
      .split('.')
      .at(-1) ?? '';
  return (entryOf(knownInside, path) ?? entryOf(known, last))?.decimals;
}
