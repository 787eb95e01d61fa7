import { type ConditionsInUse, readGas } from '../equilibrium/conditions.js';
import type { PH } from '../equilibrium/quantities.js';
import { stepAt } from '../equilibrium/temperature/pka-at.js';
import { pKaSlopeAt } from '../equilibrium/temperature/pka-slope-at.js';
import { frozen } from '../frozen.js';
import { Faults } from '../input/faults.js';
import type { Solution } from '../solution/solution.js';
import { numberAt } from '../solver/number-at.js';
import type { LeftOut } from '../substance/left-out.js';
import type { Protolyte, Step } from '../substance/protolyte.js';
import { type BufferChoice, readBufferChoice } from './read-buffer-choice.js';
import { type StrongPoint, strongSearch } from './strong-search.js';

/** A protolyte as a buffer at the target pH. */
export interface BufferCandidate {
  readonly protolyte: Protolyte;
  /** The step whose pKa is nearest, from 1. */
  readonly step: number;
  /** At the temperature asked for, at zero ionic strength. */
  readonly pKa: number;
  /** Target pH less that pKa. */
  readonly distance: number;
  /**
   * mol/L per unit of pH at the target, water's share included; null where no strong acid or base reaches the target.
   */
  readonly capacity: number | null;
  /** dpKa/dT at that temperature, per °C; null where the enthalpy is not known. */
  readonly perCelsius: number | null;
  /** Within one pH unit of the pKa (common practice). */
  readonly useful: boolean;
  /** The caution of the protolyte, where it has one. */
  readonly hazard?: string;
}

/** Protolytes in order. */
export interface BufferRanking {
  /** The best first. */
  readonly ranking: readonly BufferCandidate[];
  /** Those too hazardous for a buffer, and why; name them in `include` to have them ranked. */
  readonly leftOut: readonly LeftOut[];
}

/**
 * Ranks protolytes as buffers for a pH: by capacity there, by temperature coefficient, by distance from the pKa. What
 * lies within one pH unit of its pKa comes before what does not: a steady pKa does not help where there is no capacity.
 *
 * Capacity is that of `molar` mol/L of the protolyte, brought to the target with strong acid or base; pKa and its
 * temperature coefficient are those of `pKaAt` at the temperature of the conditions.
 *
 * What is too hazardous for a teaching lab (`notForBuffers` of the protolyte) is left out, with the reason, unless
 * `include` names its id. Each candidate carries the hazard of its protolyte. A ranking does not consider what else a
 * buffer may do: bind metals, evaporate, precipitate, bleach, feed bacteria.
 *
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { acids, chooseBuffer } from 'protolysis';
 *
 * const { ranking } = chooseBuffer({ pH: 7.4, among: [acids.acetic, acids.tris, acids.phosphoric, acids.hepes] });
 * ranking.map(({ protolyte }) => protolyte.id); // => ['hepes', 'phosphoric', 'tris', 'acetic']
 * ranking[2]?.perCelsius; // => -0.0279
 * ```
 */
export function chooseBuffer(choice: BufferChoice): BufferRanking {
  const faults = new Faults('chooseBuffer');
  const { pH, molar, rankBy, inUse, among, leftOut } = readBufferChoice(choice, faults);
  faults.done();
  const solutions = among.map((protolyte) => bareSolution(protolyte, molar));
  readGas(solutions, inUse, 'conditions', faults);
  faults.done();

  const order = ['usefulness', rankBy, 'capacity', 'temperature', 'distance'] as const;
  const ranking = among
    .map((protolyte, k) =>
      candidateOf(protolyte, pH, strongSearch(solutions[k] as Solution, inUse)(pH), inUse),
    )
    .sort((first, second) => {
      const [decisive = 0] = order.map((by) => cost[by](first) - cost[by](second)).filter((gap) => gap !== 0);
      return decisive;
    });
  return frozen({ ranking, leftOut });
}

/** The smaller, the better. */
const cost = {
  usefulness: ({ useful }: BufferCandidate) => Number(!useful),
  capacity: ({ capacity }: BufferCandidate) => -(capacity ?? 0),
  temperature: ({ perCelsius }: BufferCandidate) => Math.abs(perCelsius ?? Number.MAX_VALUE),
  distance: ({ distance }: BufferCandidate) => Math.abs(distance),
} as const;

/** mol/L of the protolyte in its most protonated form, with no ion beside it. */
const bareSolution = (protolyte: Protolyte, molar: number): Solution => ({
  mL: 1,
  contents: [
    {
      reagent: {
        id: `bare ${protolyte.id}`,
        name: protolyte.name,
        protolytes: [{ protolyte, count: 1 }],
        ions: [],
      },
      mmol: molar,
    },
  ],
});

function candidateOf(
  protolyte: Protolyte,
  pH: PH,
  { found, capacity }: StrongPoint,
  { celsius }: ConditionsInUse,
): BufferCandidate {
  const pKas = protolyte.steps.map((step) => stepAt(step, celsius));
  const nearest = pKas.reduce(
    (best, pKa, k) => (Math.abs(pH - pKa) < Math.abs(pH - numberAt(pKas, best)) ? k : best),
    0,
  );
  const pKa = numberAt(pKas, nearest);
  return {
    protolyte,
    step: nearest + 1,
    pKa,
    distance: pH - pKa,
    capacity: found ? capacity : null,
    perCelsius: pKaSlopeAt(protolyte.steps[nearest] as Step, celsius),
    useful: Math.abs(pH - pKa) <= 1,
    ...(protolyte.hazard !== undefined && { hazard: protolyte.hazard }),
  };
}
