import type { Vessel } from '../catalogue/glassware.js';

/** One dilution: a whole number of pipettes of a stock, made up to the mark of a flask. */
export interface Dilution {
  /** What is diluted. */
  readonly of: string;
  /** How many times the pipette is filled. */
  readonly times: number;
  readonly pipette: Vessel;
  readonly flask: Vessel;
  readonly glass: 'A' | 'B';
  /** mol/L that it gives. */
  readonly molar: number;
}

/** The vessels at hand, the smallest first, and their class. */
export interface VesselsAtHand {
  readonly pipettes: readonly Vessel[];
  readonly flasks: readonly Vessel[];
  readonly glass: 'A' | 'B';
}

/**
 * A pipette is filled at most so often for one dilution, and at most so many dilutions follow each other (common
 * practice).
 */
export const dilutionLimits = { times: 4, dilutions: 6 } as const;

/** Volumes that differ by rounding alone are equal. */
const rounding = 1e-9;

/** A measured volume into a flask. */
interface Measure {
  readonly times: number;
  readonly pipette: Vessel;
  readonly flask: Vessel;
  /** mL that is taken. */
  readonly taken: number;
  /** mL by which the flask is larger than the last one: so much more is made than has to be. */
  readonly excess: number;
  /** Sum of the squares of the relative limits of error. */
  readonly squares: number;
}

/** Dilutions so far. */
interface Way {
  readonly before: Way | null;
  readonly measure: Measure | null;
  readonly molar: number;
  readonly excess: number;
  readonly squares: number;
}

/**
 * The dilutions that give a concentration in a flask: the fewest that the vessels at hand allow. Of several ways it
 * takes the one whose flasks exceed the last by least, and of those the one with the least uncertainty.
 *
 * Ends    after `dilutionLimits.dilutions` rounds. A round first goes backwards, over concentrations alone, which are
 *         few: pipettes and flasks come in sizes of 1, 2, 2.5 and 5. Only what can end well is then gone through with
 *         its vessels.
 *
 * @param last - the flask of the last dilution
 * @returns undefined where no such number of dilutions gives it
 * @internal
 */
export function dilutionsTo(
  molar: number,
  stock: { readonly name: string; readonly molar: number },
  last: Vessel,
  vessels: VesselsAtHand,
): readonly Dilution[] | undefined {
  const measures = vessels.flasks.flatMap((flask) => measuresInto(flask, last, vessels));
  const finishing = measures.filter(({ flask }) => flask === last);
  // before[k]: what k dilutions may bring to the concentration wanted
  let latest: Concentrations = new Set([keyOf(molar)]);
  const before = [latest];
  for (let count = 1; count <= dilutionLimits.dilutions; count += 1) {
    latest = concentrationsBefore(latest, count === 1 ? finishing : measures, stock.molar);
    before.push(latest);
    if (!holds(latest, stock.molar)) continue;
    let ways: readonly Way[] = [{ before: null, measure: null, molar: stock.molar, excess: 0, squares: 0 }];
    for (let left = count - 1; left >= 0; left -= 1)
      ways = onward(ways, left === 0 ? finishing : measures, (given) => holds(before[left], given));
    const [best] = ways;
    if (best) return dilutionsOf({ ...best, molar }, stock.name, vessels.glass);
  }
  return undefined;
}

/** By their logarithms, in units of `rounding`. */
type Concentrations = ReadonlySet<number>;

const keyOf = (molar: number): number => Math.round(Math.log(molar) / rounding);

/** Whether a concentration is one of them; rounding may put it beside. */
const holds = (known: Concentrations | undefined, molar: number): boolean =>
  [-1, 0, 1].some((step) => known?.has(keyOf(molar) + step));

/** What one dilution brings to concentrations, no more than `most`; the volumes at hand are not looked at. */
function concentrationsBefore(
  after: Concentrations,
  measures: readonly Measure[],
  most: number,
): Concentrations {
  const ratios = new Set(measures.map(({ taken, flask }) => keyOf(taken / flask.mL)));
  const limit = keyOf(most) + 1;
  return new Set(
    [...after].flatMap((key) => [...ratios].map((ratio) => key - ratio)).filter((key) => key <= limit),
  );
}

/** Each volume that the pipettes measure into a flask, by the pipette that errs least. */
function measuresInto(flask: Vessel, last: Vessel, { pipettes, glass }: VesselsAtHand): Measure[] {
  const best = new Map<number, Measure>();
  for (const pipette of pipettes)
    for (let times = 1; times <= dilutionLimits.times && times * pipette.mL < flask.mL; times += 1) {
      const taken = times * pipette.mL;
      const squares = square(pipette, glass) + square(flask, glass);
      const known = best.get(taken);
      if (known === undefined || squares < known.squares)
        best.set(taken, { times, pipette, flask, taken, excess: Math.max(flask.mL - last.mL, 0), squares });
    }
  return [...best.values()];
}

const square = ({ mL, tolerance }: Vessel, glass: 'A' | 'B'): number => (tolerance[glass] / mL) ** 2;

/**
 * One more dilution of every way: of those with one flask and one concentration the best, and the best of all first.
 */
function onward(
  ways: readonly Way[],
  measures: readonly Measure[],
  isWanted: (molar: number) => boolean,
): Way[] {
  const best = new Map<Vessel, Map<number, Way>>();
  for (const way of ways)
    for (const measure of measures) {
      const { flask, taken } = measure;
      const molar = (way.molar * taken) / flask.mL;
      if (!isWanted(molar) || (way.measure && taken > way.measure.flask.mL)) continue;
      const excess = way.excess + measure.excess;
      const next: Way = { before: way, measure, molar, excess, squares: way.squares + measure.squares };
      const ofFlask = best.get(flask) ?? new Map<number, Way>();
      best.set(flask, ofFlask);
      const known = ofFlask.get(keyOf(molar));
      if (known === undefined || byLoss(next, known) < 0) ofFlask.set(keyOf(molar), next);
    }
  return [...best.values()].flatMap((ofFlask) => [...ofFlask.values()]).sort(byLoss);
}

/** Less excess first, then less uncertainty. */
const byLoss = (first: Way, second: Way): number =>
  first.excess - second.excess || first.squares - second.squares;

function dilutionsOf({ before, measure, molar }: Way, name: string, glass: 'A' | 'B'): Dilution[] {
  if (!before || !measure) return [];
  const { times, pipette, flask } = measure;
  const of = before.measure ? 'the solution just made' : name;
  return [...dilutionsOf(before, name, glass), { of, times, pipette, flask, glass, molar }];
}
