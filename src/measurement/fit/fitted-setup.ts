import { merged } from '../../solution/merged.js';
import type { Content, Solution } from '../../solution/solution.js';
import { numberAt } from '../../solver/number-at.js';
import type { Reagent } from '../../substance/reagent.js';
import type { ReadSetup } from '../../titration/read-setup.js';
import type { FitParameter } from './parameter-moves.js';

/** A set-up with the amounts and constants that a fit found. The probe's and the burette's own faults are left out. @internal */
export function fittedSetup(
  setup: ReadSetup,
  parameters: readonly FitParameter[],
  values: ArrayLike<number>,
): { readonly analyte: Solution; readonly titrant: Solution } {
  const solutions = { flask: setup.analyte, titrant: setup.titrant };
  const withContents = (what: 'flask' | 'titrant') => {
    const { contents, ...rest } = solutions[what];
    const perUnit = what === 'titrant' ? rest.mL : 1;
    const added = parameters.flatMap(({ moves, start }, j) =>
      moves.what === what ? moved(moves.contents, (numberAt(values, j) - start) * perUnit) : [],
    );
    const all = added.length === 0 ? contents : merged([...contents, ...added]);
    return { ...rest, contents: all.map(({ reagent, mmol }) => ({ reagent: withConstants(reagent), mmol })) };
  };
  const withConstants = (reagent: Reagent): Reagent =>
    parameters.reduce(
      (given, { moves, start }, j) =>
        moves.what === 'pKa' ? withConstant(given, moves, numberAt(values, j) - start) : given,
      reagent,
    );
  return { analyte: withContents('flask'), titrant: withContents('titrant') };
}

const moved = (contents: readonly Content[], by: number): readonly Content[] =>
  contents.map(({ reagent, mmol }) => ({ reagent, mmol: mmol * by })).filter(({ mmol }) => mmol !== 0);

const fitted = { kind: 'commonPractice', note: 'fitted to readings' } as const;

/** A reagent with one constant moved, if it holds that protolyte. */
function withConstant(
  reagent: Reagent,
  { protolyte: id, step: moving }: { readonly protolyte: string; readonly step: number },
  by: number,
): Reagent {
  if (!reagent.protolytes.some(({ protolyte }) => protolyte.id === id)) return reagent;
  const protolytes = reagent.protolytes.map(({ protolyte, count }) => {
    if (protolyte.id !== id) return { protolyte, count };
    const steps = protolyte.steps.map((step, k) =>
      k === moving ? { ...step, pKa: step.pKa + by, source: fitted } : step,
    );
    return { protolyte: { ...protolyte, steps }, count };
  });
  return { ...reagent, protolytes };
}
