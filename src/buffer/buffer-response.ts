import type { Conditions } from '../equilibrium/conditions.js';
import type { PH } from '../equilibrium/quantities.js';
import { frozen } from '../frozen.js';
import { Faults } from '../input/faults.js';
import { aliquot } from '../solution/aliquot.js';
import { readSolutions } from '../solution/read-solution.js';
import type { PouredSolution, Solution } from '../solution/solution.js';
import { readVolumes } from '../titration/sampling/curve.js';
import { titrate } from '../titration/titrate.js';
import { bufferDefaults, bufferLimits } from './buffer-defaults.js';
import { givenConditions } from './given-conditions.js';

/** The addition to a buffer, and the liquids to compare with. */
export interface BufferAddition {
  /** What is added: usually a strong acid or base, such as 1 mol/L HCl. Its volume sets no limit. */
  readonly add: Solution;
  /** How many drops, counted from 0; instead of `volumes`. */
  readonly drops?: number;
  /** mL added in all, in any order; instead of `drops`. */
  readonly volumes?: ArrayLike<number>;
  /** mL of a drop; 0.05 if left out. */
  readonly dropSize?: number;
  /** Other liquids to show beside it, such as water that took up carbon dioxide; each in the buffer's volume. */
  readonly beside?: readonly Solution[];
  readonly conditions?: Conditions;
}

/** pH after each addition, as plain columns. */
export interface BufferResponse {
  /** mL added in all. */
  readonly mL: readonly number[];
  /** Of the buffer. */
  readonly pH: readonly PH[];
  /** Of the same volume of pure water. */
  readonly water: readonly PH[];
  /** Of the same volume of each of the liquids in `beside`. */
  readonly beside: readonly (readonly PH[])[];
}

/**
 * The response of a buffer to acid or base: the pH after each addition, beside the same volume of pure water.
 *
 * Each point is the equilibrium of buffer and addition poured together, volumes additive: n drops one by one give the
 * same as their volume at once.
 *
 * Strong acids and bases harm eyes and skin: see `cautionsOf`, the safety data sheet, the local rules and a qualified
 * supervisor.
 *
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { bufferResponse, makeSolution, reagents } from 'protolysis';
 *
 * const response = bufferResponse(
 *   makeSolution({
 *     mL: 50,
 *     contents: [
 *       { reagent: reagents.sodiumDihydrogenPhosphate, molar: 0.05 },
 *       { reagent: reagents.disodiumHydrogenPhosphate, molar: 0.05 },
 *     ],
 *   }),
 *   { add: makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 1 }] }), drops: 2 },
 * );
 * response.mL; // => [0, 0.05, 0.1]
 * response.pH; // => [7.198, 7.181, 7.163]
 * response.water; // => [6.998, 3.000, 2.700]
 * ```
 */
export function bufferResponse(solution: PouredSolution, addition: BufferAddition): BufferResponse {
  const faults = new Faults('bufferResponse');
  const keys = ['add', 'drops', 'volumes', 'dropSize', 'beside', 'conditions'];
  const unread = faults.object(addition, 'addition', 'an addition { add, drops | volumes }', keys);
  const others =
    unread.beside === undefined ? [] : faults.list(unread.beside, 'beside', 'a list of solutions', 0, 100);
  const [buffer, titrant, ...beside] = readSolutions(
    [
      { value: solution, path: 'solution', isPoured: true },
      { value: unread.add, path: 'add' },
      ...others.map((value, k) => ({ value, path: `beside[${k}]` })),
    ],
    faults,
  ) as [Solution, Solution, ...Solution[]];
  const mL = readAdded(unread.drops, unread.volumes, unread.dropSize, faults);
  const conditions = givenConditions(unread.conditions, 'conditions', faults);
  faults.done();

  const responseOf = (analyte: Solution): PH[] =>
    Array.from(titrate({ analyte, titrant, conditions }).pHs(mL));
  return frozen({
    mL,
    pH: responseOf(buffer),
    water: responseOf({ mL: buffer.mL, contents: [] }),
    beside: beside.map((liquid) => responseOf(aliquot(liquid, { mL: buffer.mL }))),
  });
}

function readAdded(drops: unknown, volumes: unknown, dropSize: unknown, faults: Faults): number[] {
  if ((drops === undefined) === (volumes === undefined))
    faults.add(
      drops === undefined ? 'missing' : 'conflict',
      'addition',
      'one of drops and volumes',
      drops === undefined ? undefined : 'drops and volumes',
    );
  const size = readDropSize(dropSize, faults);
  if (volumes !== undefined) {
    if (dropSize !== undefined) faults.add('conflict', 'dropSize', 'no dropSize beside volumes', dropSize);
    return Array.from(readVolumes(volumes, 'volumes', faults));
  }
  if (drops === undefined) return [];
  const limits = { from: 0, to: bufferLimits.drops, integer: true };
  const count = faults.number(drops, 'drops', 'a number of drops', limits);
  return Array.from({ length: count + 1 }, (_, k) => Number((k * size).toPrecision(15)));
}

/** Reads the volume of a drop, mL. @internal */
export function readDropSize(value: unknown, faults: Faults): number {
  if (value === undefined) return bufferDefaults.dropSize;
  const [from, to] = bufferLimits.dropSize;
  return faults.number(value, 'dropSize', 'a volume in mL', { from, to });
}
