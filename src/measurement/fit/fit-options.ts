import type { Faults } from '../../input/faults.js';
import { type ReadSetup, readSetup } from '../../titration/read-setup.js';
import type { Titration } from '../../titration/titration.js';
import {
  type ReadingUncertainty,
  readReadingUncertainty,
  usualReadingUncertainty,
} from '../reading-uncertainty.js';
import { fitParameters } from './fit-parameters.js';
import { type FreeParameter, readFree } from './free-parameter.js';
import type { FitParameter } from './parameter-moves.js';

/** What a fit needs. */
export interface FitOptions {
  /** The titration as it was meant: where the search starts. */
  readonly titration: Pick<Titration, 'setup'>;
  /** What may differ from it, one to ten parameters. */
  readonly free: readonly FreeParameter[];
  /** Standard uncertainties of one pH and of one volume, mL; `usualReadingUncertainty` if left out. */
  readonly uncertainty?: ReadingUncertainty;
  /**
   * `estimated`, the default: the readings scatter in the proportion of `uncertainty`, and how much is seen from the
   * residuals. `known`: they scatter as `uncertainty` says.
   */
  readonly scatter?: 'estimated' | 'known';
}

/** Options of a fit that have been read. @internal */
export interface FitInUse {
  readonly setup: ReadSetup;
  readonly free: readonly FreeParameter[];
  readonly parameters: readonly FitParameter[];
  readonly uncertainty: ReadingUncertainty;
  readonly scatter: 'estimated' | 'known';
}

const optionKeys = ['titration', 'free', 'uncertainty', 'scatter'];

/** Reads the options of a fit, noting every fault. @internal */
export function readFitOptions(value: unknown, path: string, faults: Faults): FitInUse {
  const unread = faults.object(value, path, 'options { titration, free }', optionKeys);
  const { titration, uncertainty = usualReadingUncertainty, scatter = 'estimated' } = unread;
  const asked = faults.object(titration, `${path}.titration`, 'a titration as titrate returns it');
  const setup = readSetup(asked.setup, `${path}.titration.setup`, faults);
  readFixedCarbonDioxide(setup, `${path}.titration.setup`, faults);
  const free = readFree(unread.free, `${path}.free`, faults);
  if (scatter !== 'estimated' && scatter !== 'known')
    faults.add('wrong-type', `${path}.scatter`, "'estimated' or 'known'", scatter);
  return {
    setup,
    free,
    parameters: faults.any ? [] : fitParameters(free, setup, `${path}.free`, faults),
    uncertainty: readReadingUncertainty(uncertainty, `${path}.uncertainty`, faults),
    scatter: scatter === 'known' ? 'known' : 'estimated',
  };
}

/** What leaves the flask on the way depends on the whole history, and no derivative of it is known here. @internal */
export function readFixedCarbonDioxide({ inUse, boilOut }: ReadSetup, path: string, faults: Faults): void {
  const what = 'none in a fit: fit the part before, or treat the carbon dioxide as closed or open to the air';
  if (boilOut) faults.add('conflict', `${path}.boilOut`, what, boilOut, 'there');
  if (inUse.carbonDioxide?.escape !== undefined)
    faults.add('conflict', `${path}.conditions.carbonDioxide.escape`, what, inUse.carbonDioxide.escape);
}
