import { type Conditions, readConditions, readGas, type Settled } from '../equilibrium/conditions.js';
import type { PH } from '../equilibrium/quantities.js';
import { stepAt } from '../equilibrium/temperature/pka-at.js';
import { pKaSlopeAt } from '../equilibrium/temperature/pka-slope-at.js';
import { Faults } from '../errors.js';
import type { Solution } from '../solution/solution.js';
import { type Protolyte, readProtolyte, type Step } from '../substance/protolyte.js';
import { bufferDefaults, bufferLimits } from './defaults.js';
import { type StrongPoint, strongSearch } from './strong-search.js';

/** Which pH, and which protolytes come into question. */
export interface BufferChoice {
  readonly pH: PH;
  /** The protolytes to choose among: `Object.values(acids)` for the whole catalogue. */
  readonly among: readonly Protolyte[];
  /** mol/L of the protolyte; 0.1 if left out. */
  readonly molar?: number;
  /** What decides among the useful, and then among the others; the rest break ties. */
  readonly rankBy?: 'capacity' | 'temperature' | 'distance';
  readonly conditions?: Conditions;
  /** Ids of protolytes to rank although they are `notForBuffers`; none if left out. */
  readonly include?: readonly string[];
}

/** A protolyte as a buffer at the target pH. */
export interface BufferCandidate {
  readonly protolyte: Protolyte;
  /** The step whose pKa is nearest, from 1. */
  readonly step: number;
  /** At the temperature asked for, at zero ionic strength. */
  readonly pKa: number;
  /** Target pH less that pKa. */
  readonly distance: number;
  /** mol/L per unit of pH at the target, water's share included; null where no strong acid or base reaches the target. */
  readonly capacity: number | null;
  /** dpKa/dT at that temperature, per °C; null where the enthalpy is not known. */
  readonly perCelsius: number | null;
  /** Within one pH unit of the pKa (common practice). */
  readonly useful: boolean;
  /** The caution of the protolyte, where it has one. */
  readonly hazard?: string;
}

/**
 * Ranks protolytes as buffers for a pH: by capacity there, by temperature coefficient, by distance from the pKa. What lies
 * within one pH unit of its pKa comes before what does not: the steadiest pKa is no help where it holds nothing.
 *
 * Capacity is that of `molar` mol/L of the protolyte, brought to the target with strong acid or base; pKa and its temperature
 * coefficient are those of `pKaAt` at the temperature of the conditions.
 *
 * What is too hazardous for a teaching lab (`notForBuffers` of the protolyte gives the reason) is left out, unless `include`
 * names its id; if nothing else is among them, the list is empty. Each candidate carries the hazard of its protolyte. A ranking knows nothing of what else a buffer may
 * do: bind metals, evaporate, precipitate, bleach, feed bacteria.
 *
 * @returns the best first
 * @throws InputError that lists every fault
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
  const keys = ['pH', 'among', 'molar', 'rankBy', 'conditions', 'include'];
  const unread = faults.object(choice, 'choice', 'a choice { pH, among }', keys);
  const [from, to] = bufferLimits.pH;
  const pH = faults.number(unread.pH, 'pH', 'a pH', { from, to });
  const list = faults.list(unread.among, 'among', 'a list of protolytes', 1, 1000);
  const offered = Array.from(list, (one, k) => readProtolyte(one, `among[${k}]`, faults));
  const included = faults
    .list(unread.include ?? [], 'include', 'a list of ids of protolytes in among', 0, 1000)
    .map((id, k) => faults.text(id, `include[${k}]`, 'an id'));
  const { molar = bufferDefaults.molar, rankBy = 'capacity' } = unread;
  const [least, most] = bufferLimits.molar;
  const limits = { from: least, to: most };
  const concentration = faults.number(molar, 'molar', 'a concentration in mol/L', limits);
  if (rankBy !== 'capacity' && rankBy !== 'temperature' && rankBy !== 'distance')
    faults.add('wrong-type', 'rankBy', "'capacity', 'temperature' or 'distance'", rankBy);
  const settled = readConditions(unread.conditions, 'conditions', faults);
  faults.done();
  for (const [k, id] of included.entries())
    if (!offered.some((one) => one.id === id))
      faults.add('unknown-substance', `include[${k}]`, 'the id of a protolyte in among', id);
  faults.done();
  const among = offered.filter(
    ({ id, notForBuffers }) => notForBuffers === undefined || included.includes(id),
  );
  const solutions = among.map((protolyte) => bareSolution(protolyte, concentration));
  readGas(solutions, settled, 'conditions', faults);
  faults.done();

  const order = [
    'usefulness',
    rankBy as NonNullable<BufferChoice['rankBy']>,
    'capacity',
    'temperature',
    'distance',
  ] as const;
  return among
    .map((protolyte, k) =>
      candidateOf(protolyte, pH, strongSearch(solutions[k] as Solution, settled)(pH), settled),
    )
    .sort((one, other) => {
      const [decisive = 0] = order.map((by) => cost[by](one) - cost[by](other)).filter((gap) => gap !== 0);
      return decisive;
    });
}

/** The less the better. */
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
  { celsius }: Settled,
): BufferCandidate {
  const pKas = protolyte.steps.map((step) => stepAt(step, celsius));
  const nearest = pKas.reduce(
    (best, pKa, k) => (Math.abs(pH - pKa) < Math.abs(pH - (pKas[best] as number)) ? k : best),
    0,
  );
  const pKa = pKas[nearest] as number;
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
