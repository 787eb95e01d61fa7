import type { Faults } from '../../input/faults.js';

/**
 * What a fit is free to change.
 *
 * - `analyteAmount`: of all reagents in the flask together, in proportion, mmol
 * - `{ amountOf }`: of one reagent in the flask, by its id, mmol
 * - `titrantConcentration`: of all reagents of the titrant together, in proportion, mol/L
 * - `carbonDioxide`: dissolved in the flask beyond what the set-up holds, mmol
 * - `titrantCarbonDioxide`: taken up by the titrant beyond what the set-up holds, mol/L
 * - `{ pKa, step }`: of a protolyte, by its id; step 1 is the first proton to leave
 * - `probeOffset`: what the probe shows too much at pH 7
 * - `probeSlope`: as a fraction of the ideal slope, about pH 7
 * - `probeDrift`: by how much what the probe shows moves from the first reading to the last, evenly by number of reading
 * - `unsettledShare`: of each change in pH, what is left to come when the reading is taken, 0 to 1
 * - `initialVolume`: mL of titrant delivered before the totals begin, below zero where fewer were delivered:
 *   −0.35 where a first reading of 0.35 was not subtracted. A total of zero is taken as read before the first drop: leave
 *   that reading out where something had run in by then
 * - `{ bubbleAfter }`: mL of air that left the burette tip after so many mL, read from there on and never poured
 */
export type FreeParameter =
  | 'analyteAmount'
  | 'titrantConcentration'
  | 'carbonDioxide'
  | 'titrantCarbonDioxide'
  | 'probeOffset'
  | 'probeSlope'
  | 'probeDrift'
  | 'unsettledShare'
  | 'initialVolume'
  | { readonly bubbleAfter: number }
  | { readonly amountOf: string }
  | { readonly pKa: string; readonly step: number };

const named = [
  'analyteAmount',
  'titrantConcentration',
  'carbonDioxide',
  'titrantCarbonDioxide',
  'probeOffset',
  'probeSlope',
  'probeDrift',
  'unsettledShare',
  'initialVolume',
] as const;

const what = `one of ${named.join(', ')}, { amountOf: id }, { pKa: id, step } or { bubbleAfter: mL }`;

/** At most as many free parameters. */
const most = 10;

/** Reads a list of free parameters, each there once. @internal */
export function readFree(value: unknown, path: string, faults: Faults): readonly FreeParameter[] {
  const items = faults.list(value, path, `a list of what is free: ${what}`, 1, most);
  const free = items.map((item, k) => readOne(item, `${path}[${k}]`, faults));
  const keys = free.map((each) => JSON.stringify(each));
  const twice = keys.findIndex((key, k) => keys.indexOf(key) < k);
  if (twice >= 0) faults.add('conflict', `${path}[${twice}]`, 'each parameter once', items[twice]);
  return free;
}

function readOne(value: unknown, path: string, faults: Faults): FreeParameter {
  if (typeof value === 'string' || value === undefined) {
    const known = named.find((each) => each === value);
    if (!known) faults.add(value === undefined ? 'missing' : 'out-of-range', path, what, value);
    return known ?? 'analyteAmount';
  }
  const kinds = [['amountOf'], ['bubbleAfter'], ['pKa', 'step']];
  const given = faults.object(value, path, what);
  const kind = kinds.find(([key = '']) => given[key] !== undefined) ?? kinds.flat();
  const unread = faults.object(value, path, what, kind);
  if (unread.amountOf !== undefined)
    return { amountOf: faults.text(unread.amountOf, `${path}.amountOf`, 'the id of a reagent') };
  if (unread.bubbleAfter !== undefined) {
    const mL = { from: 0, to: 1e6 };
    return { bubbleAfter: faults.number(unread.bubbleAfter, `${path}.bubbleAfter`, 'a volume in mL', mL) };
  }
  const pKa = faults.text(unread.pKa, `${path}.pKa`, 'the id of a protolyte');
  const whole = { from: 1, to: 100, integer: true };
  return { pKa, step: faults.number(unread.step, `${path}.step`, 'the number of a step', whole) };
}
