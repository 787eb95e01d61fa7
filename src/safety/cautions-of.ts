import { frozen } from '../frozen.js';
import { Faults } from '../input/faults.js';
import { isList } from '../input/safe-read.js';
import { cautionsInSolution } from './cautions-in-solution.js';
import { cautionsOfBottle } from './cautions-of-bottle.js';
import { type GasSetFree, gasesOf } from './gases-from.js';
import { type Handled, type HandledParts, joined, readHandled } from './read-handled.js';
import { strongestOfEach } from './strongest-of-each.js';
import { worstOfEach } from './worst-of-each.js';

/** The last line of every list of cautions. */
export const lastCaution =
  "Wear eye protection. The safety data sheet of each bottle, the local rules and a qualified supervisor's word come before this list.";

/**
 * The usual cautions for what is handled: of each reagent, protolyte and indicator its own, once; of each mixture the
 * gases that it sets free (`gasesFrom`); and last the line that defers to the safety data sheet, local rules and a
 * qualified supervisor. What has no caution here may still be hazardous.
 *
 * What a solution holds counts at its concentration: 0.01 mol/L hydrochloric acid is below the limits from which it is
 * corrosive or irritating, and the list says so; the bottle it is made from keeps its own words.
 *
 * Things side by side count as not mixed: for the gases that they set free together, give the mixture or the titration.
 *
 * A reagent without words of its own has those of its protolytes. Of a titration or its setup, analyte and titrant
 * count mixed in every proportion. What else may happen in a mixture (heat, precipitates, explosions) is not looked at.
 *
 * @param handled - one thing, a list of them, or several: see {@link Handled}
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { cautionsOf, reagents } from 'protolysis';
 *
 * const cautions = cautionsOf([reagents.sodiumCarbonate, reagents.sodiumChloride]);
 * cautions.length; // => 2
 * cautions[0]; // => 'sodium carbonate: Irritates the eyes; do not raise dust. It foams with acid. For solutions, see the safety data sheet.'
 * ```
 */
export function cautionsOf(
  ...handled: readonly [Handled | readonly Handled[]] | readonly Handled[]
): readonly string[] {
  const faults = new Faults('cautionsOf');
  const given = handled.length > 1 ? handled : handled[0];
  const read = isList(given)
    ? faults
        .list(given, 'handled', 'a list')
        .map((one, index) => readHandled(one, `handled[${index}]`, faults))
    : [readHandled(given, '', faults)];
  faults.done();

  return frozen([...cautionsFor(joined(read)), lastCaution]);
}

/** The cautions of what has been read, without the last line. @internal */
export function cautionsFor({ bottles, liquids, mixtures }: HandledParts): readonly string[] {
  const ofEach = [
    ...bottles.flatMap(cautionsOfBottle),
    ...liquids.flatMap((liquid) => cautionsInSolution(liquid)),
  ];
  const gases = worstOfEach(mixtures.flatMap(gasesOf));
  return [...new Set([...ofEach, ...gases.map(({ caution }) => caution)])];
}

/**
 * The same for what is to be found by titration: no concentration is told, and of a gas its advice alone. Each reagent
 * has the line of its bottle, or else of its strongest solution: two that name no concentration would contradict.
 *
 * @param sayGas - the caution for a gas
 * @internal
 */
export function cautionsWithoutAmounts(
  { bottles, liquids, mixtures }: HandledParts,
  sayGas: (gas: GasSetFree) => string,
): readonly string[] {
  const bottled = bottles.map(({ name }) => name);
  const ofEach = [
    ...bottles.flatMap(cautionsOfBottle),
    ...strongestOfEach(liquids, bottled).flatMap((liquid) => cautionsInSolution(liquid, false)),
  ];
  return [...new Set([...ofEach, ...worstOfEach(mixtures.flatMap(gasesOf)).map(sayGas)])];
}
