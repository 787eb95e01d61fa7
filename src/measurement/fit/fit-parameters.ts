import { systemOf } from '../../equilibrium/system.js';
import type { Faults } from '../../input/faults.js';
import type { ReadSetup } from '../../titration/read-setup.js';
import { contentsParameter } from './contents-parameter.js';
import type { FreeParameter } from './free-parameter.js';
import type { BenchParameter, FitParameter } from './parameter-moves.js';

/** The parameters of a fit, noting a fault for each that the set-up does not have. @internal */
export function fitParameters(
  free: readonly FreeParameter[],
  setup: ReadSetup,
  path: string,
  faults: Faults,
): readonly FitParameter[] {
  return free.map((each, k) => parameterOf(each, setup, `${path}[${k}]`, faults));
}

function parameterOf(free: FreeParameter, setup: ReadSetup, path: string, faults: Faults): FitParameter {
  if (typeof free === 'object' && 'airBubbleAfter' in free) {
    const { airBubbleAfter: after } = free;
    return { ...airBubble, name: `air bubble after ${after} mL`, free, moves: { what: 'airBubble', after } };
  }
  if (typeof free === 'object' && 'pKa' in free) return pKaOf(free, setup, path, faults);
  if (typeof free === 'object' || !isBenchParameter(free))
    return contentsParameter(free, setup, path, faults);
  return { ...bench[free], free, moves: { what: free } };
}

const isBenchParameter = (free: string): free is BenchParameter => Object.hasOwn(bench, free);

/**
 * How far the bench's own parameters may go: beyond these the readings are of another make. A slope below a tenth of the
 * ideal would be no probe.
 */
const bench = {
  probeOffset: { name: 'offset of the probe', unit: 'pH', start: 0, from: -7, to: 7 },
  probeSlope: { name: 'slope of the probe', unit: '%', start: 100, from: 10, to: 1000 },
  probeDrift: { name: 'drift of the probe', unit: 'pH', start: 0, from: -7, to: 7 },
  readTooSoon: { name: 'share of a change that had not settled', unit: '', start: 0, from: 0, to: 0.95 },
  initialReading: { name: 'initial reading of the burette', unit: 'mL', start: 0, from: -1e3, to: 1e3 },
} as const satisfies Readonly<Record<BenchParameter, object>>;

/** No air runs back into a tip. */
const airBubble = { unit: 'mL', start: 0, from: 0, to: 1e3 } as const;

/** The search starts from the constant in use: at the temperature and, with a law of activity, at zero strength. */
function pKaOf(
  free: FreeParameter & { readonly pKa: string; readonly step: number },
  { analyte, titrant, inUse }: ReadSetup,
  path: string,
  faults: Faults,
): FitParameter {
  const { protolytes, balance } = systemOf([analyte, titrant], inUse);
  const index = protolytes.findIndex(({ id }) => id === free.pKa);
  const constants = balance.families[index]?.constants ?? new Float64Array(0);
  const ids = protolytes.map(({ id }) => `'${id}'`).join(', ') || 'there is none';
  if (index < 0)
    faults.add(
      'out-of-range',
      `${path}.pKa`,
      `the id of a protolyte of fixed amount there: ${ids}`,
      free.pKa,
    );
  else if (free.step > constants.length)
    faults.add('out-of-range', `${path}.step`, `a step from 1 to ${constants.length}`, free.step);
  const start = -Math.log10(constants[free.step - 1] ?? 1e-7);
  return {
    free,
    name: `pKa ${free.step} of ${protolytes[index]?.name}`,
    unit: '',
    start,
    from: start - furthestPKa,
    to: start + furthestPKa,
    moves: { what: 'pKa', protolyte: free.pKa, step: free.step - 1 },
  };
}

/** A constant further off is that of another acid. */
const furthestPKa = 5;
