import type { Faults } from '../input/faults.js';
import type { Protolyte } from '../substance/protolyte.js';
import type { Reagent } from '../substance/reagent.js';

/** A reagent, and where the caller gave it. */
export interface Given {
  readonly reagent: Reagent;
  readonly path: string;
}

/**
 * Notes a fault where one id means two reagents, or two sets of constants, in one call.
 *
 * @internal
 */
export function readConflicts(given: readonly Given[], faults: Faults): void {
  const makeUps = new Map<string, string>();
  const constants = new Map<string, string>();
  for (const { reagent, path } of given) {
    if (!agrees(makeUps, reagent.id, makeUpOf(reagent)))
      faults.add(
        'conflict',
        path,
        `one make-up for the reagent '${reagent.id}'`,
        reagent,
        'another one under the same id',
      );
    for (const [index, { protolyte }] of reagent.protolytes.entries())
      if (!agrees(constants, protolyte.id, constantsAsText(protolyte)))
        faults.add(
          'conflict',
          `${path}.protolytes[${index}].protolyte`,
          `one set of constants for the protolyte '${protolyte.id}'`,
          protolyte,
          'another one under the same id',
        );
  }
}

/** Whether an id means the same substance as where it stood first. */
function agrees(known: Map<string, string>, id: string, text: string): boolean {
  const first = known.get(id) ?? text;
  known.set(id, first);
  return first === text;
}

/** What a reagent gives to a solution, as text: a copy that came through JSON gives the same. */
function makeUpOf({ protolytes, ions, molarMass }: Reagent): string {
  return JSON.stringify([
    protolytes.map(({ protolyte, count }) => [protolyte.id, count]),
    ions.map(({ ion, count }) => [ion.formula, ion.charge, count]),
    molarMass ?? null,
  ]);
}

/** All that a calculation takes from a protolyte, as text. @internal */
export function constantsAsText({ species, steps }: Protolyte): string {
  return JSON.stringify([
    species.map(({ formula, charge }) => [formula, charge]),
    steps.map(({ pKa, dH = null, dCp = null, log10K, ionicStrength = 0, convention = 'concentration' }) => [
      pKa,
      dH,
      dCp,
      log10K?.coefficients ?? null,
      ionicStrength,
      convention,
    ]),
  ]);
}
