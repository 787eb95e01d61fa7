import type { Faults } from '../input/faults.js';
import { noteLength, readSource, type Source } from '../source.js';

/** That a reagent is weighed as a primary standard. */
export interface PrimaryStandard {
  /** What it standardises. */
  readonly standardises: 'acids' | 'bases';
  /** What is done to it before it is weighed, such as `dried at 110 to 120 °C for two hours`. */
  readonly treatment: string;
  readonly source: Source;
}

/** Reads that a reagent is a primary standard, noting every fault. @internal */
export function readPrimaryStandard(value: unknown, path: string, faults: Faults): PrimaryStandard {
  const what = 'a primary standard { standardises, treatment, source }';
  const unread = faults.object(value, path, what, ['standardises', 'treatment', 'source']);
  const { standardises } = unread;
  if (standardises !== 'acids' && standardises !== 'bases')
    faults.add('wrong-type', `${path}.standardises`, "'acids' or 'bases'", standardises);
  return {
    standardises: standardises === 'bases' ? 'bases' : 'acids',
    treatment: faults.text(unread.treatment, `${path}.treatment`, 'a text', noteLength),
    source: readSource(unread.source, `${path}.source`, faults),
  };
}
