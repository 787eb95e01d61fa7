import { waterMass } from '../catalogue/atomic-weights.js';
import { heatOfNeutralisation, heatsOfDilution, heatsOfSolution } from '../catalogue/heats.js';
import { entryOf } from '../entry-of.js';
import { equilibrate } from '../equilibrium/equilibrate.js';
import { frozen } from '../frozen.js';
import type { Content, Solution } from '../solution/solution.js';
import { sum } from '../solver/sum.js';
import type { Source } from '../source.js';
import type { Reagent } from '../substance/reagent.js';

/** What mixing gives off, as an estimate. */
export interface HeatOfMixing {
  /** Given off; below 0 where the mixture cools. */
  readonly kJ: number;
  /** By how much the mixture warms if none of it is lost, K. */
  readonly kelvin: number;
  /** What had no heat at hand and counts as 0. */
  readonly notCounted: readonly string[];
  readonly sources: readonly Source[];
}

/** One thing that is mixed. */
export interface Mixed {
  readonly contents: readonly Content[];
  /** Volume of a solution, mL; null for a dry solid or a pure liquid. */
  readonly mL: number | null;
  /** Moles of water to one of the reagent, where that is known; null where it follows from the volume. */
  readonly water: number | null;
}

/**
 * The rises, in K, from which a recipe states the heat of mixing, says to cool, and is refused. Above about
 * 60 °C a mixture that started at 20 °C steams, spits and scalds.
 *
 * Source: common practice.
 */
export const heatLimits = /*#__PURE__*/ frozen({ stated: 5, cooled: 10, refused: 40 } as const);

/** J to warm a mL by a kelvin: of 1 mol/L salt solutions 3.9 to 4.0 J/(g K), of water 4.18. */
const heatCapacity = 4;
const heatCapacitySource: Source = {
  kind: 'commonPractice',
  note: 'a mL of solution takes 4 J per kelvin, and none of the heat is lost',
};

/**
 * The heat of mixing, as an estimate: that of each ingredient on its way into water, and of protons on their way from
 * one base to another.
 *
 *   q = Σ H(ingredient in water) − H(mixture) − Σ n·ΔH(solution) + Σ n·(L(before) − L(after))             (1)
 *   H = Σ c·V·(ΔH₁ + … + ΔHⱼ) over every form that has lost j protons, + 55.84 kJ/mol · n(OH⁻)             (2)
 *
 * with L what dilution without end gives off. Enthalpies are those of 25 °C and count for every concentration, so that
 * in concentrated mixtures q is good to a fifth at best.
 *
 * @param mL - the volume that is warmed
 * @internal
 */
export function heatOfMixing(parts: readonly Mixed[], mixture: Solution, mL: number): HeatOfMixing {
  const inWater = sum(parts.map(({ contents, mL: own }) => enthalpyOf({ mL: own ?? mixture.mL, contents })));
  const dissolved = parts.flatMap(({ contents, mL: own, water }) =>
    own === null && water === null ? contents.map((content) => dissolving(content)) : [],
  );
  const diluted = parts.flatMap(({ contents, mL: own, water }) =>
    own === null && water === null
      ? []
      : contents.map((content) => dilution(content, own ?? 0, water, mixture)),
  );
  const joules = inWater - enthalpyOf(mixture) + sum([...dissolved, ...diluted]);
  return {
    kJ: joules / 1000,
    kelvin: joules / (heatCapacity * mL),
    notCounted: notCountedIn(parts),
    sources: sourcesOf(parts),
  };
}

/** (2), in J. */
function enthalpyOf(solution: Solution): number {
  const { species } = equilibrate(solution);
  const protolytes = new Map(
    solution.contents.flatMap(({ reagent }) =>
      reagent.protolytes.map(({ protolyte }) => [protolyte.id, protolyte]),
    ),
  );
  const ofForms = species.map(({ protolyteId, formula, molar }) => {
    const protolyte = protolytes.get(protolyteId ?? '');
    if (!protolyte) return formula === 'OH-' && protolyteId === null ? -heatOfNeutralisation.kJ * molar : 0;
    const lost = protolyte.species.findIndex((form) => form.formula === formula);
    return molar * sum(protolyte.steps.slice(0, lost).map(({ dH = 0 }) => dH));
  });
  return solution.mL * sum(ofForms);
}

/** J given off as a dry solid or a pure liquid dissolves. */
const dissolving = ({ reagent, mmol }: Content): number =>
  -mmol * (entryOf(heatsOfSolution, reagent.id)?.kJ ?? 0);

/** J given off as a solution of it is diluted into the mixture. */
function dilution({ reagent, mmol }: Content, mL: number, water: number | null, mixture: Solution): number {
  const heat = entryOf(heatsOfDilution, reagent.id);
  if (!heat || !(mmol > 0)) return 0;
  const waterIn = (volume: number) =>
    Math.max(waterPerML * volume - (heat.displaces * mmol) / 1000, 0) / waterMass / (mmol / 1000);
  const before = interpolated(heat.givenOff, water ?? waterIn(mL));
  return mmol * Math.max(before - interpolated(heat.givenOff, waterIn(mixture.mL)), 0);
}

/** g of water in a mL at 25 °C, as `waterDensityAt` has it: heats of dilution are not known to the fourth digit. */
const waterPerML = 0.997;

/** Along the logarithm of the water; beyond the ends, that of the end. */
function interpolated(rows: readonly (readonly [number, number])[], water: number): number {
  const next = rows.findIndex(([at]) => at >= water);
  const [first, last] = [rows[0], rows[rows.length - 1]];
  if (next === 0) return first?.[1] ?? 0;
  if (next < 0) return last?.[1] ?? 0;
  const [low, high] = [rows[next - 1], rows[next]] as [readonly [number, number], readonly [number, number]];
  const share = Math.log(water / low[0]) / Math.log(high[0] / low[0]);
  return low[1] + share * (high[1] - low[1]);
}

const isDry = ({ mL, water }: Mixed): boolean => mL === null && water === null;

/** Ingredients without a heat of solution, and protolytes with a step without an enthalpy. */
function notCountedIn(parts: readonly Mixed[]): string[] {
  const reagents = parts.flatMap((part) =>
    part.contents.map(({ reagent }) => ({ reagent, dry: isDry(part) })),
  );
  const dry = reagents.flatMap(({ reagent, dry: isSolid }) =>
    isSolid && !entryOf(heatsOfSolution, reagent.id) ? [`dissolving ${reagent.name}`] : [],
  );
  const steps = reagents.flatMap(({ reagent }) =>
    reagent.protolytes.flatMap(({ protolyte: { name, steps: all } }) =>
      all.some(({ dH }) => dH === undefined) ? [`ionisation of ${name}`] : [],
    ),
  );
  return [...new Set([...dry, ...steps])];
}

function sourcesOf(parts: readonly Mixed[]): Source[] {
  const heatsFor = (part: Mixed, { id }: Reagent) =>
    (isDry(part) ? heatsOfSolution : heatsOfDilution)[id]?.source;
  const ofParts = parts.flatMap((part) => part.contents.map(({ reagent }) => heatsFor(part, reagent)));
  const known = ofParts.filter((source) => source !== undefined);
  return [...new Set([heatOfNeutralisation.source, heatCapacitySource, ...known])];
}
