import {
  acids,
  type Curve,
  defineProtolyte,
  type Equilibrium,
  equilibrate,
  type Ingredient,
  indicators,
  makeSolution,
  makeStock,
  mix,
  molarOf,
  type PcH,
  type PH,
  type Reagent,
  reagents,
  type Solution,
  type Source,
  type Titration,
  titrate,
} from 'protolysis';
import { describe, expectTypeOf, test } from 'vitest';

// What the compiler must refuse: a line marked @ts-expect-error that compiles after all fails `npm run types`. The
// functions are never called; what happens where the compiler is not listened to is tested elsewhere.
declare const solution: Solution;
declare const equilibrium: Equilibrium;
declare const titration: Titration;
declare const curve: Curve;
declare const source: Source;
const { sodiumCarbonate: reagent } = reagents;

describe('the compiler', () => {
  test('knows the ids of the catalogues', () => {
    expectTypeOf(acids.acetic.id).toEqualTypeOf<'acetic'>();
    expectTypeOf(reagent.id).toEqualTypeOf<'sodiumCarbonate'>();
    expectTypeOf(indicators.methylOrange.id).toEqualTypeOf<'methylOrange'>();
    expectTypeOf([reagents.ammonia, reagents.tris]).toExtend<Reagent[]>();
  });

  test('knows the formulas of a protolyte', () => {
    expectTypeOf(() => molarOf(equilibrium, acids.carbonic, 'HCO3-')).returns.toBeNumber();
    // @ts-expect-error carbonate's formula is CO3(2-)
    () => molarOf(equilibrium, acids.carbonic, 'CO3');
    // @ts-expect-error a formula of another acid
    () => molarOf(equilibrium, acids.acetic, 'HCO3-');
    // @ts-expect-error a text that may be anything
    (formula: string) => molarOf(equilibrium, acids.acetic, formula);
  });

  test('wants a stated volume where a solution is poured, and none where its concentrations count', () => {
    () => {
      const titrant = makeSolution({ contents: [{ reagent, molar: 0.1 }] });
      const analyte = makeSolution({ mL: 20, contents: [{ reagent, molar: 0.1 }] });
      titrate({ analyte, titrant });
      titrate({ analyte: solution, titrant });
      equilibrate(titrant);
      // @ts-expect-error the volume of the analyte was not stated
      titrate({ analyte: titrant, titrant });
      // @ts-expect-error nor that of a part of the mixture
      mix(analyte, titrant);
    };
  });

  test('takes an ingredient from a form as it is', () => {
    (value: number, unit: 'grams' | 'molar', purity: number | undefined) => {
      const amount = unit === 'grams' ? { grams: value, purity } : { molar: value };
      makeSolution({ mL: 20, contents: [{ reagent, ...amount }] });
    };
    // @ts-expect-error two quantities
    () => makeSolution({ contents: [{ reagent, grams: 1, molar: 0.1 }] });
  });

  test('knows them for a protolyte of the user’s own', () => {
    () => {
      const own = defineProtolyte({
        id: 'own',
        name: 'own',
        species: [
          { formula: 'HA', charge: 0 },
          { formula: 'A-', charge: -1 },
        ],
        steps: [{ pKa: 5, source }],
      });
      molarOf(equilibrium, own, 'A-');
      // @ts-expect-error not one of its two forms
      molarOf(equilibrium, own, 'A');
    };
  });

  test('wants a source for each constant', () => {
    const species = [
      { formula: 'HA', charge: 0 },
      { formula: 'A-', charge: -1 },
    ] as const;
    // @ts-expect-error a pKa without a source
    () => defineProtolyte({ id: 'own', name: 'own', species, steps: [{ pKa: 5 }] });
    // @ts-expect-error a published source without a place in the work
    expectTypeOf<{ kind: 'published'; work: string }>().toExtend<Source>();
  });

  test('takes one quantity of an ingredient', () => {
    expectTypeOf({ reagent, grams: 1, purity: 0.9 }).toExtend<Ingredient>();
    expectTypeOf({ reagent, mmol: 1 }).toExtend<Ingredient>();
    expectTypeOf({ reagent, molar: 1 }).toExtend<Ingredient>();
    // @ts-expect-error none
    () => makeSolution({ contents: [{ reagent }] });
    // @ts-expect-error two
    () => makeSolution({ contents: [{ reagent, grams: 1, mmol: 1 }] });
    // @ts-expect-error purity of an amount
    () => makeSolution({ contents: [{ reagent, mmol: 1, purity: 0.9 }] });
    // @ts-expect-error a typing slip
    () => makeSolution({ ml: 5, contents: [] });
    // @ts-expect-error a name instead of a reagent
    () => makeSolution({ contents: [{ reagent: 'Na2CO3', grams: 1 }] });
  });

  test('tells units and arguments apart', () => {
    // @ts-expect-error no density
    () => makeStock({ reagent, massPercent: 37 });
    // @ts-expect-error a list of solutions
    () => mix([solution, solution]);
    // @ts-expect-error a list of contents instead of a solution
    () => titrate({ analyte: [], titrant: solution });
    // @ts-expect-error no titrant
    () => titrate({ analyte: solution });
    // @ts-expect-error pKw misspelt
    () => equilibrate(solution, { pKW: 14 });
    // @ts-expect-error text for a number
    () => titration.pHAt('5');
  });

  test('tells pH from pcH, and takes a plain number for either', () => {
    expectTypeOf<7>().toExtend<PH>();
    expectTypeOf<number>().toExtend<PcH>();
    expectTypeOf<Equilibrium['pH']>().toEqualTypeOf<PH>();
    expectTypeOf<PcH>().not.toExtend<PH>();
    expectTypeOf<PH>().not.toExtend<PcH>();
    () => titration.volumeAt(equilibrium.pH);
    // @ts-expect-error a concentration exponent where an activity exponent is wanted
    () => titration.volumeAt(equilibrium.pcH);
  });

  test('lets no result be changed', () => {
    // @ts-expect-error readonly
    () => (solution.mL = 5);
    // @ts-expect-error readonly
    () => solution.contents.push({ reagent, mmol: 1 });
    // @ts-expect-error readonly
    () => (equilibrium.pH = 7);
    // @ts-expect-error readonly
    () => (curve.mL[0] = 1);
    // @ts-expect-error readonly
    () => titration.equivalencePoints.pop();
    // @ts-expect-error readonly
    () => (acids.acetic.steps[0].pKa = 5);
  });

  test('makes the caller look for a volume that may not be', () => {
    expectTypeOf<ReturnType<Titration['volumeAt']>>().toEqualTypeOf<number | null>();
    // @ts-expect-error it may be undefined
    () => titration.volumeAt(7).toFixed(2);
  });

  test('takes one kind of additions', () => {
    () => titration.curve({ every: 0.5, upTo: 45 });
    () => titration.curve({ volumes: [1, 2] });
    () => titration.curve({ maxStep: 0.1, upTo: 45 });
    // @ts-expect-error no end
    () => titration.curve({ every: 0.5 });
    // @ts-expect-error two kinds
    () => titration.curve({ every: 0.5, maxStep: 0.1, upTo: 45 });
    // @ts-expect-error volumes have their own end
    () => titration.curve({ volumes: [1], upTo: 45 });
  });
});
