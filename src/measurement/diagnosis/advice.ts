import type { BenchFaultKind } from '../practice/bench-fault.js';

/** What to do about a fault. @internal */
export interface Advice {
  /** A measurement that tells this fault from others. */
  readonly check: string;
  /** What to do next time, or with these readings. */
  readonly remedy: string;
}

/** Common practice, in words of this package. @internal */
export const advice: Readonly<Record<BenchFaultKind, Advice>> = {
  sampleAmount: {
    check: 'Weigh or pipette the sample again and titrate that.',
    remedy: 'Trust the titration for the amount if the titrant was standardised.',
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
    check: 'Watch one reading beyond the steep part for a minute.',
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
    remedy: 'Add the steps up: each entry is a total from the start.',
  },
};
