import type { Faults } from '../../input/faults.js';

/**
 * What a fit is free to change. What may be wrong at the bench has the name and sign that it has as a `BenchFault`, and
 * the same unit but where this list says so.
 *
 * - `sampleAmount`: of all reagents in the flask together, in proportion, mmol (as a fault: over the stated amount)
 * - `{ amountOf }`: of one reagent in the flask, by its id, mmol
 * - `titrantConcentration`: of all reagents of the titrant together, in proportion, mol/L (as a fault: over the stated one)
 * - `carbonDioxideInFlask`: dissolved in the flask at the start beyond what the set-up holds, mol/L
 * - `carbonDioxideInTitrant`: taken up by the titrant beyond what the set-up holds, mol/L
 * - `{ pKa, step }`: of a protolyte, by its id; step 1 is the first proton to leave
 * - `probeOffset`: what the probe shows too much at pH 7
 * - `probeSlope`: in % of the ideal slope, about pH 7, as `calibrateProbe` gives it
 * - `probeDrift`: by how much what the probe shows moves from the first reading to the last, evenly by number of reading
 * - `readTooSoon`: of each change in pH, the share still to come when the reading is taken, 0 to 0.95 (as a fault: the
 *   wait in time constants of the probe; share = exp(−wait))
 * - `initialReading`: mL that the burette showed before the first drop and that nobody subtracted; below zero where titrant
 *   had run in before the totals begin. A total of zero is taken as read before the first drop: leave that reading out
 *   where something had run in by then
 * - `{ airBubbleAfter }`: mL of air that left the burette tip after so many mL were read, counted from there on and never
 *   poured (as a fault: `airBubble` with `mL` and `after`)
 */
export type FreeParameter =
  | 'sampleAmount'
  | 'titrantConcentration'
  | 'carbonDioxideInFlask'
  | 'carbonDioxideInTitrant'
  | 'probeOffset'
  | 'probeSlope'
  | 'probeDrift'
  | 'readTooSoon'
  | 'initialReading'
  | { readonly airBubbleAfter: number }
  | { readonly amountOf: string }
  | { readonly pKa: string; readonly step: number };

const ofContents = [
  'sampleAmount',
  'titrantConcentration',
  'carbonDioxideInFlask',
  'carbonDioxideInTitrant',
] as const;
const ofBench = ['probeOffset', 'probeSlope', 'probeDrift', 'readTooSoon', 'initialReading'] as const;
const named = [...ofContents, ...ofBench];

/** Whether a parameter is a fault of the probe or the burette, and not of what the solutions hold. @internal */
export const isOfBench = (free: FreeParameter): boolean =>
  typeof free === 'object' ? 'airBubbleAfter' in free : ofBench.some((name) => name === free);

const what = `one of ${named.join(', ')}, { amountOf: id }, { pKa: id, step } or { airBubbleAfter: mL }`;

/** At most as many free parameters. */
const most = 10;

/** Reads a list of free parameters, each there once. @internal */
export function readFree(value: unknown, path: string, faults: Faults): readonly FreeParameter[] {
  const before = faults.count;
  const items = faults.list(value, path, `a list of what is free: ${what}`, 1, most);
  const free = items.map((item, k) => readOne(item, `${path}[${k}]`, faults));
  const keys = free.map((each) => JSON.stringify(each));
  const twice = keys.findIndex((key, k) => keys.indexOf(key) < k);
  if (faults.count === before && twice >= 0)
    faults.add('conflict', `${path}[${twice}]`, 'each parameter once', items[twice]);
  return free;
}

function readOne(value: unknown, path: string, faults: Faults): FreeParameter {
  if (typeof value === 'string' || value === undefined) {
    const known = named.find((each) => each === value);
    const wanted = value === 'airBubble' ? '{ airBubbleAfter: mL }, the volume at which it left' : what;
    if (!known) faults.add(value === undefined ? 'missing' : 'out-of-range', path, wanted, value);
    return known ?? 'sampleAmount';
  }
  const kinds = [['amountOf'], ['airBubbleAfter'], ['pKa', 'step']];
  const given = faults.object(value, path, what);
  const kind = kinds.find(([key = '']) => given[key] !== undefined) ?? kinds.flat();
  const unread = faults.object(value, path, what, kind);
  if (unread.amountOf !== undefined)
    return { amountOf: faults.text(unread.amountOf, `${path}.amountOf`, 'the id of a reagent') };
  if (unread.airBubbleAfter !== undefined) {
    const mL = { from: 0, to: 1e6 };
    return {
      airBubbleAfter: faults.number(unread.airBubbleAfter, `${path}.airBubbleAfter`, 'a volume in mL', mL),
    };
  }
  const pKa = faults.text(unread.pKa, `${path}.pKa`, 'the id of a protolyte');
  const whole = { from: 1, to: 100, integer: true };
  return { pKa, step: faults.number(unread.step, `${path}.step`, 'the number of a step', whole) };
}
