import { type Conditions, type ConditionsInUse, readConditions } from '../equilibrium/conditions.js';
import type { PH } from '../equilibrium/quantities.js';
import type { Faults } from '../input/faults.js';
import type { LeftOut } from '../substance/left-out.js';
import type { Protolyte } from '../substance/protolyte.js';
import { readProtolyte } from '../substance/read-protolyte.js';
import { bufferDefaults, bufferLimits } from './buffer-defaults.js';

/** The pH, and the protolytes to choose among. */
export interface BufferChoice {
  readonly pH: PH;
  /** The protolytes to choose among: `Object.values(acids)` for the whole catalogue. */
  readonly among: readonly Protolyte[];
  /** mol/L of the protolyte; 0.1 if left out. */
  readonly molar?: number;
  /** The criterion among the useful, and then among the others. The other criteria break ties. */
  readonly rankBy?: 'capacity' | 'temperature' | 'distance';
  readonly conditions?: Conditions;
  /** Ids of protolytes to rank although they are `notForBuffers`; none if left out. */
  readonly include?: readonly string[];
}

/** A choice that has been read. */
interface ReadBufferChoice {
  readonly pH: PH;
  readonly molar: number;
  readonly rankBy: NonNullable<BufferChoice['rankBy']>;
  readonly inUse: ConditionsInUse;
  /** Without those that are left out. */
  readonly among: readonly Protolyte[];
  readonly leftOut: readonly LeftOut[];
}

/** Reads a choice from a caller's value, noting every fault. @internal */
export function readBufferChoice(value: unknown, faults: Faults): ReadBufferChoice {
  const keys = ['pH', 'among', 'molar', 'rankBy', 'conditions', 'include'];
  const unread = faults.object(value, 'choice', 'a choice { pH, among }', keys);
  const [from, to] = bufferLimits.pH;
  const pH = faults.number(unread.pH, 'pH', 'a pH', { from, to });
  const { molar = bufferDefaults.molar, rankBy = 'capacity', include = [] } = unread;
  const candidates = readCandidates(unread.among, include, faults);
  const [least, most] = bufferLimits.molar;
  const limits = { from: least, to: most };
  const concentration = faults.number(molar, 'molar', 'a concentration in mol/L', limits);
  if (rankBy !== 'capacity' && rankBy !== 'temperature' && rankBy !== 'distance')
    faults.add('wrong-type', 'rankBy', "'capacity', 'temperature' or 'distance'", rankBy);
  const inUse = readConditions(unread.conditions, 'conditions', faults);
  return {
    pH,
    molar: concentration,
    rankBy: rankBy as ReadBufferChoice['rankBy'],
    inUse,
    ...candidates,
  };
}

/** Reads the protolytes, and parts them: those to rank, and those that are too hazardous and not named in `include`. */
function readCandidates(among: unknown, include: unknown, faults: Faults) {
  const before = faults.count;
  const list = faults.list(among, 'among', 'a list of protolytes, such as Object.values(acids)', 1, 1000);
  const offered = Array.from(list, (one, k) => readProtolyte(one, `among[${k}]`, faults));
  const ids = faults
    .list(include, 'include', 'a list of ids of protolytes in among', 0, 1000)
    .map((id, k) => faults.text(id, `include[${k}]`, 'the id of a protolyte'));
  if (faults.count === before)
    for (const [k, id] of ids.entries())
      if (!offered.some((protolyte) => protolyte.id === id))
        faults.add('unknown-substance', `include[${k}]`, 'the id of a protolyte in among', id);

  const isLeftOut = ({ id, notForBuffers }: Protolyte) => notForBuffers !== undefined && !ids.includes(id);
  return {
    among: offered.filter((protolyte) => !isLeftOut(protolyte)),
    leftOut: offered
      .filter(isLeftOut)
      .map(({ id, name, notForBuffers }) => ({ id, name, reason: notForBuffers?.reason ?? '' })),
  };
}
