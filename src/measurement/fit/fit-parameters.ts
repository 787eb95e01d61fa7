import { carbonic } from '../../catalogue/acids/inorganic.js';
import { carbonDioxide } from '../../catalogue/reagents/carbonates.js';
import { systemOf } from '../../equilibrium/system.js';
import type { Faults } from '../../input/faults.js';
import type { Content, Solution } from '../../solution/solution.js';
import type { Protolyte } from '../../substance/protolyte.js';
import type { ReadSetup } from '../../titration/read-setup.js';
import type { FreeParameter } from './free-parameter.js';

/** What changes with a parameter. @internal */
type Moves =
  /** The flask, or one mL of titrant, holds these contents more for each unit. */
  | { readonly what: 'flask' | 'titrant'; readonly contents: readonly Content[] }
  | { readonly what: 'pKa'; readonly protolyte: string; readonly step: number }
  | { readonly what: BenchParameter }
  | { readonly what: 'airBubble'; readonly after: number };

/** What a parameter of the bench alters. @internal */
export type BenchParameter = 'probeOffset' | 'probeSlope' | 'probeDrift' | 'readTooSoon' | 'initialReading';

/** A free parameter in the light of a set-up. @internal */
export interface FitParameter {
  readonly free: FreeParameter;
  readonly name: string;
  readonly unit: 'mmol' | 'mol/L' | 'pH' | 'mL' | '%' | '';
  /** As the set-up has it: where the search starts. */
  readonly start: number;
  readonly from: number;
  readonly to: number;
  readonly moves: Moves;
}

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
  if (typeof free === 'object')
    return 'amountOf' in free ? amountOf(free, setup, path, faults) : pKaOf(free, setup, path, faults);
  const { analyte, titrant } = setup;
  if (free === 'sampleAmount') return scaled(free, 'amount of sample', 'mmol', analyte, 1, path, faults);
  if (free === 'titrantConcentration')
    return scaled(free, 'concentration of the titrant', 'mol/L', titrant, titrant.mL, path, faults);
  if (free === 'carbonDioxideInFlask')
    return gas(free, 'carbon dioxide in the flask', 'flask', setup, path, faults);
  if (free === 'carbonDioxideInTitrant')
    return gas(free, 'carbon dioxide in the titrant', 'titrant', setup, path, faults);
  return { ...instrument[free], free, moves: { what: free } };
}

/**
 * How far the bench's own parameters may go: beyond these the readings are of another make. A slope below a tenth of the
 * ideal would be no probe.
 */
const instrument = {
  probeOffset: { name: 'offset of the probe', unit: 'pH', start: 0, from: -7, to: 7 },
  probeSlope: { name: 'slope of the probe', unit: '%', start: 100, from: 10, to: 1000 },
  probeDrift: { name: 'drift of the probe', unit: 'pH', start: 0, from: -7, to: 7 },
  readTooSoon: { name: 'share of a change that had not settled', unit: '', start: 0, from: 0, to: 0.95 },
  initialReading: { name: 'initial reading of the burette', unit: 'mL', start: 0, from: -1e3, to: 1e3 },
} as const;

/** No air runs back into a tip. */
const airBubble = { unit: 'mL', start: 0, from: 0, to: 1e3 } as const;

/** An amount may not reach zero, where its pH would no longer depend on it, nor pass a millionfold of what was expected. */
const amountRange = (start: number) => ({ from: start * 1e-6, to: start * 1e6 });

/** All contents of a solution in proportion; `perUnit` turns the parameter into mmol. */
function scaled(
  free: FreeParameter,
  name: string,
  unit: 'mmol' | 'mol/L',
  { contents }: Solution,
  perUnit: number,
  path: string,
  faults: Faults,
): FitParameter {
  const all = contents.reduce((sum, { mmol }) => sum + mmol, 0);
  if (!(all > 0))
    faults.add('conflict', path, 'a parameter of a solution that holds something', free, 'one of pure water');
  const start = all / perUnit;
  const what = unit === 'mmol' ? 'flask' : 'titrant';
  const shares = contents.map(({ reagent, mmol }) => ({ reagent, mmol: mmol / all }));
  return { free, name, unit, start, ...amountRange(start), moves: { what, contents: shares } };
}

function amountOf(
  free: FreeParameter & { readonly amountOf: string },
  { analyte }: ReadSetup,
  path: string,
  faults: Faults,
): FitParameter {
  const content = analyte.contents.find(({ reagent }) => reagent.id === free.amountOf);
  const ids = analyte.contents.map(({ reagent }) => `'${reagent.id}'`).join(', ') || 'there is none';
  if (!content || !(content.mmol > 0))
    faults.add('out-of-range', `${path}.amountOf`, `the id of a reagent in the flask: ${ids}`, free.amountOf);
  const start = content?.mmol ?? 1;
  return {
    free,
    name: `amount of ${content?.reagent.name}`,
    unit: 'mmol',
    start,
    from: 0,
    to: amountRange(start).to,
    moves: { what: 'flask', contents: content ? [{ reagent: content.reagent, mmol: 1 }] : [] },
  };
}

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

/** Carbon dioxide beyond what is there, in mol/L of the flask at the start or of the titrant. It takes the constants of the carbonic acid that is there, if there is any. */
function gas(
  free: FreeParameter,
  name: string,
  what: 'flask' | 'titrant',
  setup: ReadSetup,
  path: string,
  faults: Faults,
): FitParameter {
  if (setup.inUse.carbonDioxide)
    faults.add(
      'conflict',
      path,
      'no free carbon dioxide where the conditions have an exchange with the air',
      free,
    );
  const own = protolytesOf(setup).find(({ id }) => id === carbonic.id);
  const reagent = own ? { ...carbonDioxide, protolytes: [{ protolyte: own, count: 1 }] } : carbonDioxide;
  const contents = [{ reagent, mmol: what === 'flask' ? setup.analyte.mL : 1 }];
  return { free, name, unit: 'mol/L', start: 0, from: 0, to: 1e6, moves: { what, contents } };
}

const protolytesOf = ({ analyte, titrant }: ReadSetup): readonly Protolyte[] =>
  [...analyte.contents, ...titrant.contents].flatMap(({ reagent }) =>
    reagent.protolytes.map(({ protolyte }) => protolyte),
  );
