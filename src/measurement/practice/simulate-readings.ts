import { frozen } from '../../frozen.js';
import { Faults } from '../../input/faults.js';
import { additionDefaults } from '../../preparation/addition-options.js';
import type { AdditionPlan } from '../../preparation/addition-schedule.js';
import { planAdditions } from '../../preparation/plan-additions.js';
import { makeTitration } from '../../titration/make-titration.js';
import { type ReadSetup, readSetup } from '../../titration/read-setup.js';
import { usualLastVolume } from '../../titration/sampling/usual-last-volume.js';
import type { Titration } from '../../titration/titration.js';
import { plausiblePH } from '../plausible-ph.js';
import type { Readings } from '../readings.js';
import type { BenchFault } from './bench-fault.js';
import { endpointsToFind, keyOf, type PracticeKey } from './practice-key.js';
import { type PracticeOptions, readPracticeOptions } from './practice-options.js';
import { readingsOf, traceless } from './run-readings.js';
import { filledWith } from './with-faults.js';

/** Practice readings, and what lies behind them. */
export interface PracticeData {
  readonly readings: Readings;
  readonly key: PracticeKey;
}

/**
 * Readings of a titration as a class might bring them from the bench, with the key to grade what is made of them.
 *
 * The true pH comes from the titration, changed by the faults where these change what is in the vessels. Each volume
 * then has a normal error (what runs into the flask differs from what is read) and each pH another. The faults act in
 * one order, whatever the order in the list. With one seed and one list of volumes, errors are the same with any fault
 * that leaves the number of readings.
 *
 * The same data come out on every machine: the errors are the same to the last bit (xoshiro128** and Karney's normal
 * deviates), and the pH is rounded to 0.001, as a meter displays it, so that the last bits of `Math.log` do not show.
 *
 * @param titration - as it is stated to the class; a `sampleAmount` that differs is a fault
 * @throws InputError that lists every fault; also where the probe would show a pH that no meter shows, where a fault at the
 *   bench leaves the readings as they are, and where an overshoot leaves fewer than five
 * @example
 * ```ts
 * import { makeSolution, reagents, titrate } from 'protolysis';
 * import { simulateReadings } from 'protolysis/measurement';
 *
 * const titration = titrate({
 *   analyte: makeSolution({ mL: 25, contents: [{ reagent: reagents.sodiumCarbonate, molar: 0.05 }] }),
 *   titrant: makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] }),
 * });
 * const { readings, key } = simulateReadings(titration, {
 *   seed: 17,
 *   volumes: [0, 5, 10, 15, 20, 25, 30],
 *   faults: [{ kind: 'airBubble', mL: 0.5, after: 8 }],
 * });
 * readings.mL; // => [0, 5, 10.5, 15.5, 20.5, 25.5, 30.5]
 * key.expected.faults; // => ['airBubble']
 * ```
 */
export function simulateReadings(
  titration: Pick<Titration, 'setup'>,
  options: PracticeOptions,
): PracticeData {
  const faults = new Faults('simulateReadings');
  const { setup } = faults.object(titration, 'titration', 'a titration as titrate returns it');
  const stated = readSetup(setup, 'titration.setup', faults);
  const how = readPracticeOptions(options, faults);
  faults.done();

  const filled = readFilled(stated, how.faults, faults);
  faults.done();

  const [asStated, truth] = [makeTitration(stated), makeTitration(filled)];
  const plan = how.volumes ? null : usualPlan(truth, faults);
  const planned = how.volumes ?? plan?.mL ?? [0];
  const endpoints = endpointsToFind(truth, asStated, planned.at(-1) ?? 0);
  if (endpoints.length === 0 && how.faults.some(({ kind }) => kind === 'overshoot'))
    faults.add('conflict', 'options.faults', 'no overshoot where the volumes reach no end point', how.faults);
  faults.done();

  const run = { truth, faults: how.faults, planned, endpoint: endpoints.at(-1) ?? 0 };
  const readings = readingsOf(run, how.noise, how.seed);
  noteUnreadable(readings, how.faults, faults);
  for (const fault of traceless(run, (others) => titrationWith(stated, others)))
    faults.add(
      'conflict',
      'options.faults',
      'faults that leave a trace in the readings, of a size that shows and within the volumes',
      fault,
      `${fault.kind}, which leaves none`,
    );
  faults.done();
  return frozen({
    readings: { ...readings, notes: ['Simulated readings, for practice.', ...noteOnFillings(plan)] },
    key: keyOf({ seed: how.seed, faults: how.faults, stated: asStated, truth, endpoints }),
  });
}

/** Readings that make a run, as many as one must ask for. */
const fewest = 5;

function noteUnreadable({ pH }: Pick<Readings, 'pH'>, bench: readonly BenchFault[], faults: Faults): void {
  if (pH.length < fewest)
    faults.add('conflict', 'options.faults', `an overshoot that leaves ${fewest} readings or more`, bench);
  if (!pH.every((each) => each >= plausiblePH.from && each <= plausiblePH.to))
    faults.add(
      'conflict',
      'options.faults',
      `faults and noise that keep the pH shown from ${plausiblePH.from} to ${plausiblePH.to}`,
      bench,
    );
}

/** The set-up with what is really in the vessels, read again: a fault may bring too much, or carbonic acid beside another one. */
function readFilled(stated: ReadSetup, bench: readonly BenchFault[], faults: Faults): ReadSetup {
  const { inUse, boilOut, ...vessels } = stated;
  const filled = filledWith(bench, vessels);
  const setup = { ...filled, conditions: inUse.given, ...(boilOut ? { boilOut } : {}) };
  return readSetup(setup, 'titration.setup with the faults', faults);
}

function titrationWith(stated: ReadSetup, bench: readonly BenchFault[]): Titration | null {
  const faults = new Faults('simulateReadings');
  const filled = readFilled(stated, bench, faults);
  return faults.any ? null : makeTitration(filled);
}

/** mL, last volumes for which additions of half a millilitre make a run. */
const usual = { from: 3, to: 500 };

function usualPlan(truth: Titration, faults: Faults): AdditionPlan | null {
  const last = usualLastVolume(truth.equivalencePoints, truth.setup.analyte);
  if (last >= usual.from && last <= usual.to) return planAdditions(truth);
  faults.add(
    'missing',
    'options.volumes',
    `volumes: this titration goes to ${last} mL, and steps are planned by themselves from ${usual.from} to ${usual.to} mL`,
    undefined,
  );
  return null;
}

/** Without the words of the plan, which names the equivalence point. */
const noteOnFillings = (plan: AdditionPlan | null): readonly string[] =>
  plan && plan.fillings > 1
    ? [`Totals over ${plan.fillings} fillings of a burette of ${additionDefaults.burette} mL.`]
    : [];
