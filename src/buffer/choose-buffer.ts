import type { Conditions } from '../equilibrium/conditions.js';
import { equilibrate } from '../equilibrium/equilibrate.js';
import type { PH } from '../equilibrium/quantities.js';
import { Faults } from '../errors.js';
import { type Protolyte, readProtolyte, type Step } from '../substance/protolyte.js';
import { bufferDefaults, bufferLimits } from './defaults.js';
import { givenConditions } from './given-conditions.js';
import { strongAdditionTo } from './strong-addition.js';

/** Which pH, and which protolytes come into question. */
export interface BufferChoice {
  readonly pH: PH;
  /** The protolytes to choose among: `Object.values(acids)` for the whole catalogue. */
  readonly among: readonly Protolyte[];
  /** mol/L of the protolyte; 0.1 if left out. */
  readonly molar?: number;
  /** What comes first in the ranking; the others break ties. */
  readonly rankBy?: 'capacity' | 'temperature' | 'distance';
  readonly conditions?: Conditions;
}

/** A protolyte as a buffer at the target pH. */
export interface BufferCandidate {
  readonly protolyte: Protolyte;
  /** The step whose pKa is nearest, from 1. */
  readonly step: number;
  /** At 25 °C. */
  readonly pKa: number;
  /** Target pH less pKa. */
  readonly distance: number;
  /** mol/L per unit of pH at the target, water's share included; null where no strong acid or base reaches the target. */
  readonly capacity: number | null;
  /** dpKa/dT at 25 °C, per °C; null where the enthalpy is not known. */
  readonly perCelsius: number | null;
  /** Within one pH unit of the pKa (common practice). */
  readonly useful: boolean;
}

/**
 * Ranks protolytes as buffers for a pH: by capacity there, by temperature coefficient, by distance from the pKa.
 *
 *   dpKa/dT = −ΔH° / (ln10 · R · T²),   T = 298.15 K                                                    (1)
 *
 * Capacity is that of `molar` mol/L of the protolyte, brought to the target with strong acid or base. A ranking knows
 * nothing of what else a buffer may do: bind metals, evaporate, precipitate, feed bacteria, harm who handles it.
 *
 * @returns the best first
 * @throws InputError that lists every fault
 * @see J. H. van 't Hoff's equation; R: CODATA 2018
 * @example
 * ```ts
 * import { acids, chooseBuffer } from 'protolysis';
 *
 * const ranked = chooseBuffer({ pH: 7.4, among: [acids.acetic, acids.tris, acids.phosphoric, acids.hepes] });
 * ranked.map(({ protolyte }) => protolyte.id); // => ['hepes', 'phosphoric', 'tris', 'acetic']
 * ranked[2]?.perCelsius; // => -0.0279
 * ```
 */
export function chooseBuffer(choice: BufferChoice): readonly BufferCandidate[] {
  const faults = new Faults('chooseBuffer');
  const keys = ['pH', 'among', 'molar', 'rankBy', 'conditions'];
  const unread = faults.object(choice, 'choice', 'a choice { pH, among }', keys);
  const [from, to] = bufferLimits.pH;
  const pH = faults.number(unread.pH, 'pH', 'a pH', { from, to });
  const list = faults.list(unread.among, 'among', 'a list of protolytes', 1, 1000);
  const among = Array.from(list, (one, k) => readProtolyte(one, `among[${k}]`, faults));
  const { molar = bufferDefaults.molar, rankBy = 'capacity' } = unread;
  const [least, most] = bufferLimits.molar;
  const limits = { from: least, to: most };
  const concentration = faults.number(molar, 'molar', 'a concentration in mol/L', limits);
  if (rankBy !== 'capacity' && rankBy !== 'temperature' && rankBy !== 'distance')
    faults.add('wrong-type', 'rankBy', "'capacity', 'temperature' or 'distance'", rankBy);
  const conditions = givenConditions(unread.conditions, 'conditions', faults);
  faults.done();

  const order = [rankBy as keyof typeof cost, 'capacity', 'temperature', 'distance'] as const;
  return among
    .map((protolyte) => candidateOf(protolyte, pH, concentration, conditions))
    .sort((one, other) => {
      const [decisive = 0] = order.map((by) => cost[by](one) - cost[by](other)).filter((gap) => gap !== 0);
      return decisive;
    });
}

/** The less the better. */
const cost = {
  capacity: ({ capacity }: BufferCandidate) => -(capacity ?? 0),
  temperature: ({ perCelsius }: BufferCandidate) => Math.abs(perCelsius ?? Number.MAX_VALUE),
  distance: ({ distance }: BufferCandidate) => Math.abs(distance),
} as const;

function candidateOf(protolyte: Protolyte, pH: PH, molar: number, conditions: Conditions): BufferCandidate {
  const step = protolyte.steps.reduce(
    (best, { pKa }, k) =>
      Math.abs(pH - pKa) < Math.abs(pH - (protolyte.steps[best] as Step).pKa) ? k : best,
    0,
  );
  const { pKa, dH } = protolyte.steps[step] as Step;
  const reagent = {
    id: `bare ${protolyte.id}`,
    name: protolyte.name,
    protolytes: [{ protolyte, count: 1 }],
    ions: [],
  };
  const addition = strongAdditionTo({ mL: 1, contents: [{ reagent, mmol: molar }] }, pH, conditions);
  return {
    protolyte,
    step: step + 1,
    pKa,
    distance: pH - pKa,
    capacity: addition.status === 'found' ? equilibrate(addition.solution, conditions).bufferCapacity : null,
    perCelsius: dH === undefined ? null : (-1000 * dH) / (Math.LN10 * gasConstant * 298.15 ** 2),
    useful: Math.abs(pH - pKa) <= 1,
  };
}

/** J/(mol·K), exact (CODATA 2018). */
const gasConstant = 8.314462618;
