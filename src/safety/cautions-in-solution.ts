import { capitalised } from '../capitalised.js';
import type { Solution } from '../solution/solution.js';
import { cautionsOfBottle } from './cautions-of-bottle.js';
import { concernOf, concernPercent } from './concern-of.js';

/**
 * The cautions of what a solution holds, each at its concentration: above a limit the words of that limit, below the
 * lowest that it is below. A mL of solution counts as a gram, so that the share by mass of a dense acid comes out too
 * high and that of ammonia a little too low (2 % at its limit). Reagents with cautions of one kind are not added up.
 *
 * @param amounts - whether the concentration is told; where it is to be found by titration, it is not
 * @internal
 */
export const cautionsInSolution = ({ mL, contents }: Solution, amounts = true): readonly string[] =>
  contents.flatMap(({ reagent, mmol }) => {
    const { name, hazard, molarMass } = reagent;
    if (!(mmol > 0)) return [];
    if (hazard === undefined || typeof hazard === 'string' || molarMass === undefined)
      return cautionsOfBottle(reagent);
    const molar = mmol / mL;
    const percent = (molar * molarMass) / 10;
    const label = amounts
      ? `${name}, ${rounded(molar, 3)} mol/L (about ${rounded(percent, 2)} % by mass)`
      : name;
    const concern = percent >= concernPercent ? concernOf(reagent) : [];
    const reachedLimit = hazard.limits.find((limit) => percent >= limit.percent);
    if (reachedLimit) return [`${label}: ${capitalised(reachedLimit.effect)}. ${hazard.words}`, ...concern];
    const [lowest] = hazard.limits.slice(-1);
    return [
      `${label}: below the limits, which begin at ${lowest?.percent} % by mass (${lowest?.effect}); rinse splashes off all the same.`,
      ...concern,
    ];
  });

const rounded = (value: number, digits: number): number => Number(value.toPrecision(digits));
