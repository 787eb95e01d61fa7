import type { PH } from '../equilibrium/quantities.js';
import { frozen } from '../frozen.js';
import type { Faults } from '../input/faults.js';
import { integral } from '../solver/integral.js';
import { colourlessForm, type Indicator, indicatorLimits } from '../substance/indicator.js';
import { answerOf } from './answer-of.js';

/** How an observer calls an end point: at about one pH, no further off than `within`. */
export interface Observer {
  /** The pH at which a careful observer calls it. */
  readonly at: PH;
  /** How far the call may stray to either side, in pH. */
  readonly within: number;
  /** How often it is called at a pH, in any unit; left out, a triangle that is highest at `at`. */
  readonly weight?: (pH: PH) => number;
}

/** Where calls fall: a density over pH whose integral is 1. */
export interface Calls {
  /** The call of a careful observer. */
  readonly at: PH;
  /** The first pH with any weight, the kinks, and the last. */
  readonly breaks: readonly PH[];
  readonly density: (pH: PH) => number;
}

/** From 0.001 to 3 in pH to either side. */
export const observerLimits = /*#__PURE__*/ frozen({ within: [0.001, 3] } as const);

/**
 * Where an end point is called by the indicator alone.
 *
 * Two colours: a triangle over the range, highest midway or at the titration exponent. One colour: a triangle that is
 * highest at the edge where colour just shows and zero half-way through the range. From which side the curve comes
 * makes no difference: the last trace of a fading colour and the first of a growing one are the same trace.
 *
 * @param shift - by how much the amount of a one-colour indicator moves its visible edge, in pH
 * @internal
 */
export function callsOf(indicator: Indicator, shift: number): Calls {
  const { transition, titrationExponent } = indicator;
  const middle = (transition.from + transition.to) / 2;
  const form = colourlessForm(indicator);
  if (form === 'acid') return triangle(transition.from + shift, transition.from + shift, middle + shift);
  if (form === 'base') return triangle(middle + shift, transition.to + shift, transition.to + shift);
  return triangle(transition.from, titrationExponent?.pH ?? middle, transition.to);
}

/** Calls that are most frequent at one pH and fall off evenly to either side. @internal */
export function triangle(from: PH, at: PH, to: PH): Calls {
  const height = 2 / (to - from);
  const density = (pH: PH): number => {
    if (pH < from || pH > to) return 0;
    if (pH < at) return (height * (pH - from)) / (at - from);
    return pH > at ? (height * (to - pH)) / (to - at) : height;
  };
  return { at, breaks: [from, at, to], density };
}

/** Reads an observer from a caller's value, noting every fault. @internal */
export function readObserver(value: unknown, faults: Faults): Calls {
  const unread = faults.object(value, 'observer', 'an observer { at, within }', ['at', 'within', 'weight']);
  const [lowest, highest] = indicatorLimits.pH;
  const at = faults.number(unread.at, 'observer.at', 'a pH', { from: lowest, to: highest });
  const [least, most] = observerLimits.within;
  const within = faults.number(unread.within, 'observer.within', 'a distance in pH', {
    from: least,
    to: most,
  });
  if (unread.weight === undefined) return triangle(at - within, at, at + within);
  if (typeof unread.weight !== 'function') {
    faults.add('wrong-type', 'observer.weight', 'a function of pH', unread.weight);
    return triangle(at - within, at, at + within);
  }
  return weighted(unread.weight as (pH: PH) => unknown, at, within, faults);
}

function weighted(weight: (pH: PH) => unknown, at: PH, within: number, faults: Faults): Calls {
  const checked = (pH: PH): number =>
    answerOf(
      `observer.weight(${pH})`,
      () => weight(pH),
      (answer, path, wrong) => wrong.number(answer, path, 'a weight', { from: 0, to: heaviest }),
    );
  const breaks = [at - within, at, at + within];
  if (faults.any) return { at, breaks, density: checked };
  const { value: roughly } = integral(checked, breaks, Number.POSITIVE_INFINITY);
  const { value: area } = integral(checked, breaks, 1e-9 * roughly);
  if (!(area > 1 / heaviest))
    faults.add('out-of-range', 'observer.weight', 'weights that are not 0 everywhere', area);
  return { at, breaks, density: (pH) => checked(pH) / area };
}

/** With weights up to this, and areas down to its inverse, no quotient leaves the range of doubles. */
const heaviest = 1e100;
