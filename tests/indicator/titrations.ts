import {
  defineProtolyte,
  defineReagent,
  makeSolution,
  type Reagent,
  reagents,
  type Titration,
  titrate,
} from 'protolysis';

/** `mL` of one solution titrated with another, both `molar`. */
export function titrationOf(analyte: Reagent, titrant: Reagent, molar = 0.1, mL = 25): Titration {
  return titrate({
    analyte: makeSolution({ mL, contents: [{ reagent: analyte, molar }] }),
    titrant: makeSolution({ contents: [{ reagent: titrant, molar }] }),
  });
}

export const strong = (molar = 0.1) =>
  titrationOf(reagents.hydrochloricAcid, reagents.sodiumHydroxide, molar);

/** A weak acid of one step, and the weak base whose conjugate acid has its pKa. */
export function weakPair(pKa: number): { readonly acid: Reagent; readonly base: Reagent } {
  const source = { kind: 'commonPractice', note: 'invented for a test' } as const;
  const reagentOf = (id: string, charge: number) =>
    defineReagent({
      id,
      name: id,
      protolytes: [
        {
          protolyte: defineProtolyte({
            id,
            name: id,
            species: [
              { formula: 'HA', charge },
              { formula: 'A', charge: charge - 1 },
            ],
            steps: [{ pKa, source }],
          }),
          count: 1,
        },
      ],
      ions: [],
    });
  return { acid: reagentOf('acid', 0), base: reagentOf('base', 1) };
}

/** A titration of a caller's own making, with the members that a judgement of an indicator asks for. */
export const ownTitration = (own: Partial<Titration>): Titration => own as Titration;

/** One whose pH is the volume up to 14, so that every figure about its point at 7 mL is exact. */
export const straight = ownTitration({
  pHAt: (mL) => Math.min(mL, 14),
  slopeAt: () => 1,
  volumesAt: (pH) => (pH < 0 || pH >= 14 ? [] : [pH]),
  equivalencePoints: [{ mL: 7, pH: 7, slope: 1, reaction: 'H+ + OH- -> H2O', inflection: null }],
});
