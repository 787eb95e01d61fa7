import { carbonic } from '../../catalogue/acids/inorganic.js';
import { carbonDioxide } from '../../catalogue/reagents/carbonates.js';
import type { Faults } from '../../input/faults.js';
import type { Solution } from '../../solution/solution.js';
import type { Protolyte } from '../../substance/protolyte.js';
import type { ReadSetup } from '../../titration/read-setup.js';
import type { FreeParameter } from './free-parameter.js';
import type { FitParameter } from './parameter-moves.js';

/** A parameter of what the solutions hold. */
type FreeContents =
  | 'sampleAmount'
  | 'titrantConcentration'
  | 'carbonDioxideInFlask'
  | 'carbonDioxideInTitrant'
  | Extract<FreeParameter, { readonly amountOf: string }>;

/** A parameter that moves the contents of the flask or the titrant, noting a fault where these do not have it. @internal */
export function contentsParameter(
  free: FreeContents,
  setup: ReadSetup,
  path: string,
  faults: Faults,
): FitParameter {
  const { analyte, titrant } = setup;
  if (typeof free === 'object') return amountOf(free, setup, path, faults);
  if (free === 'sampleAmount') return scaled(free, 'amount of sample', 'mmol', analyte, 1, path, faults);
  if (free === 'titrantConcentration')
    return scaled(free, 'concentration of the titrant', 'mol/L', titrant, titrant.mL, path, faults);
  if (free === 'carbonDioxideInFlask')
    return gas(free, 'carbon dioxide in the flask', 'flask', setup, path, faults);
  return gas(free, 'carbon dioxide in the titrant', 'titrant', setup, path, faults);
}

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

/**
 * Carbon dioxide beyond what is there, in mol/L of the flask at the start or of the titrant. It takes the constants of the
 * carbonic acid that is there, if there is any.
 */
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
