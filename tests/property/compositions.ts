import fc from 'fast-check';
import { acids, type Equilibrium, makeSolution, type Reagent, type Solution } from 'protolysis';
import { acidWith, strongIon } from '../make.js';

/** An acid as numbers: charge of its most protonated form, and its pKa in sequence. */
export interface Acid {
  readonly name: string;
  readonly topCharge: number;
  readonly pKa: readonly number[];
}

/** How much of each acid, and of which net strong charge, mol/L. */
export interface Composition {
  readonly acids: readonly { readonly acid: Acid; readonly molar: number }[];
  readonly strongMolar: number;
}

/** Every acid of the catalogue. */
export const handbook: readonly Acid[] = Object.values(acids).map(({ id, species, steps }) => ({
  name: id,
  topCharge: species[0]?.charge ?? 0,
  pKa: steps.map(({ pKa }) => pKa),
}));

const reagents = new Map<string, Reagent>();

export function reagentOf({ name, topCharge, pKa }: Acid): Reagent {
  const key = `${name} ${topCharge} ${pKa.join(' ')}`;
  const reagent = reagents.get(key) ?? acidWith(name, topCharge, pKa).reagent;
  reagents.set(key, reagent);
  return reagent;
}

const positive = strongIon('M+', 1);
const negative = strongIon('X-', -1);

export const solutionOf = ({ acids, strongMolar }: Composition, mL = 100): Solution =>
  makeSolution({
    mL,
    contents: [
      ...acids.map(({ acid, molar }) => ({ reagent: reagentOf(acid), molar })),
      { reagent: strongMolar < 0 ? negative : positive, molar: Math.abs(strongMolar) },
    ],
  });

/** A number whose logarithm is spread evenly. */
export const decades = (from: number, to: number): fc.Arbitrary<number> =>
  fc.double({ min: from, max: to, noNaN: true }).map((exponent) => 10 ** exponent);

/** Each a part of what is there: the strong charge that leaves the acids partly neutralised, or in excess. */
const withStrong = (acids: Composition['acids']): fc.Arbitrary<Composition> => {
  const most = acids.reduce(
    (sum, { acid, molar }) => sum + molar * Math.max(Math.abs(acid.topCharge), acid.pKa.length),
    1e-7,
  );
  return fc
    .double({ min: -1.2, max: 1.2, noNaN: true })
    .map((share) => ({ acids, strongMolar: share * most }));
};

/** One to four acids of the handbook, 1e-8 to 2 mol/L each, neutralised to any degree. */
export const handbookCompositions: fc.Arbitrary<Composition> = fc
  .uniqueArray(fc.constantFrom(...handbook), { minLength: 1, maxLength: 4 })
  .chain((acids) => fc.tuple(...acids.map((acid) => decades(-8, 0.3).map((molar) => ({ acid, molar })))))
  .chain(withStrong);

/** pKa of up to twelve protons: anywhere, close together, all equal, falling, or at the ends of the range. */
const wildPKa = fc.oneof(
  fc.array(fc.double({ min: -10, max: 20, noNaN: true }), { minLength: 1, maxLength: 12 }),
  fc
    .tuple(
      fc.double({ min: -9, max: 19, noNaN: true }),
      fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 1, maxLength: 12 }),
      fc.constantFrom(0, 1e-12, 1e-3, 1),
    )
    .map(([centre, away, scale]) => away.map((one) => centre + scale * one)),
  fc.array(fc.constantFrom(-10, -9.5, 7, 19.5, 20), { minLength: 1, maxLength: 12 }),
);
const wildMolar = fc.oneof(fc.constantFrom(0, 1e-12, 1e-7, 20), decades(-12, 1.3));

/** Anything within the limits: up to three such acids, 0 to 20 mol/L, beside 0 to 20 mol/L of strong ions. */
export const wildCompositions: fc.Arbitrary<Composition> = fc.record({
  acids: fc
    .array(fc.tuple(wildPKa, fc.integer({ min: -4, max: 8 }), fc.boolean(), wildMolar), { maxLength: 3 })
    .map((list) =>
      list.map(([pKa, topCharge, sorted, molar], k) => ({
        acid: { name: `a${k}`, topCharge, pKa: sorted ? pKa.toSorted((a, b) => a - b) : pKa },
        molar,
      })),
    ),
  strongMolar: fc.oneof(
    fc.constant(0),
    wildMolar,
    wildMolar.map((molar) => -molar),
  ),
});

/** A titration of a handbook mixture with strong acid or base, or another one. */
export const titrations: fc.Arbitrary<{ analyte: Solution; titrant: Solution }> = fc
  .record({
    analyte: handbookCompositions,
    titrant: fc.oneof(
      fc
        .tuple(decades(-4, 0), fc.boolean())
        .map(([molar, acid]) => ({ acids: [], strongMolar: acid ? -molar : molar })),
      handbookCompositions,
    ),
  })
  .map(({ analyte, titrant }) => ({ analyte: solutionOf(analyte, 20), titrant: solutionOf(titrant, 1000) }));

/**
 * How far two right answers for a pH may lie apart: 4·(condition + 2.3e-16·max(1, |pH|)) each, as reference/vectors/README.md
 * has it, with a bound for the condition that needs no oracle. With every input off by u = 2⁻⁵² relative,
 *
 *   δ(charge) ≤ u·Σ|z|c + u·ln10·(Σ C·Σⱼ|pKaⱼ|·cov(λ, [λ ≥ j]) + pKw·Kw/h)
 *
 * and since the covariances of one acid add up to the variance of λ, which stands in β = ln10·(h + Kw/h + Σ C·var λ),
 *
 *   δpH = δ(charge)/β ≤ u·(Σ|z|c/β + greatest |pK|).
 */
export function toleranceOf({ species, bufferCapacity, pH }: Equilibrium): number {
  const greatestPK = 20;
  const charges = species.reduce((sum, { charge, molar }) => sum + Math.abs(charge) * molar, 0);
  const condition = 2 ** -52 * (charges / bufferCapacity + greatestPK);
  return 8 * (condition + 2.3e-16 * Math.max(1, Math.abs(pH)));
}
