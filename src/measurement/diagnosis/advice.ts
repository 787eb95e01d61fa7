import type { BenchFaultKind } from '../practice/bench-fault.js';

/** What to do about a fault. */
interface Advice {
  /** A measurement that tells this fault from others. */
  readonly check: string;
  /** What to do next time, or with these readings. */
  readonly remedy: string;
}

/** What to do about a fault; carbon dioxide takes part in a titration by acid in another way. @internal */
export const adviceOn = (kind: BenchFaultKind, hasBasicTitrant: boolean): Advice =>
  (hasBasicTitrant ? undefined : byAcid[kind]) ?? advice[kind];

/**
 * Dissolved carbon dioxide beside carbonate is hydrogencarbonate. Water in equilibrium with air holds 0.000014 mol/L at
 * 25 °C: 4.2e-4 atm times the Henry constant in use (Plummer and Busenberg 1982).
 */
const byAcid: Partial<Readonly<Record<BenchFaultKind, Advice>>> = {
  carbonDioxideInFlask: {
    check:
      'Titrate the same water alone with base to pH 8.3, or compare the end points: with hydrogencarbonate in the sample or carbon dioxide in the water, the second volume is more than twice the first.',
    remedy:
      'Use water that was freshly boiled and cooled. Water in air holds about 0.00001 mol/L of carbon dioxide: much more than that is hydrogencarbonate in the sample.',
  },
  carbonDioxideInTitrant: {
    check: 'Titrate again with acid made from freshly boiled water, and compare.',
    remedy:
      'Make the titrant from water that was freshly boiled and cooled. Acid in air holds about 0.00001 mol/L of carbon dioxide: much more than that has another cause.',
  },
};

/** Common practice, in words of this package. */
const advice: Readonly<Record<BenchFaultKind, Advice>> = {
  sampleAmount: {
    check:
      'Titrate a second portion of another size: the same ratio again is the titrant or a content other than assumed, another ratio is the weighing.',
    remedy:
      'Trust the titration for the amount if the titrant was standardised. If the amount is what you are looking for, ask again with a wider sampleTolerance.',
  },
  titrantConcentration: {
    check: 'Standardise the titrant against a primary standard.',
    remedy: 'Calculate with the concentration found by standardisation.',
  },
  carbonDioxideInFlask: {
    check: 'Titrate a blank: the same water without the sample.',
    remedy: 'Use water that was freshly boiled and cooled, and keep the flask covered.',
  },
  carbonDioxideInTitrant: {
    check: 'Titrate a strong acid with this titrant to two end points, or compare with a fresh titrant.',
    remedy: 'Make the titrant anew from a carbonate-free stock, and keep air away from it.',
  },
  overshoot: {
    check: 'Titrate again, with drops about the end point.',
    remedy: 'Go to single drops in time.',
  },
  readTooSoon: {
    check: 'Watch one reading for a minute, right after a large change in pH.',
    remedy: 'Stir 10 to 15 s and wait until the reading stands.',
  },
  probeSlope: {
    check: 'Read two buffer standards: a wrong slope shows the more, the further from pH 7.',
    remedy: 'Calibrate with two standards about the range, and correct these readings by that calibration.',
  },
  probeOffset: {
    check: 'Read two buffer standards: an offset shows alike in both.',
    remedy: 'Calibrate the probe, and correct these readings by that calibration.',
  },
  probeDrift: {
    check: 'Read a buffer standard again and compare with the calibration before.',
    remedy: 'Correct by the calibrations before and after, and recalibrate more often.',
  },
  airBubble: {
    check: 'Titrate again with a tip that was flushed, and look at the tip.',
    remedy: 'Flush the tip before the first reading until no air is left in it.',
  },
  initialReading: {
    check: 'Look up what the burette showed before the first drop.',
    remedy: 'Subtract the first burette reading from all of them.',
  },
  incrementsAsTotals: {
    check: 'Compare the last volume with what the burette shows.',
    remedy: 'Add the steps up: each entry must be a total from the start.',
  },
};
