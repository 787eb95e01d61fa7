import type { Faults } from '../input/faults.js';
import { readSource, type Source } from '../source.js';

/** A solid of limited solubility at 25 °C. */
export interface SparinglySoluble {
  readonly name: string;
  /** What a formula unit gives to the water, by the labels of the forms, and how many of each. */
  readonly forms: Readonly<Record<string, number>>;
  /** log10 of the product of its forms in a saturated solution. */
  readonly log10K: number;
  /**
   * Of activities (a solubility product at zero ionic strength), or of concentrations in pure water that holds no more,
   * mol/L.
   */
  readonly of: 'activities' | 'concentrations';
  readonly source: Source;
}

const keys = ['name', 'forms', 'log10K', 'of', 'source'];

/** Reads a solid from a caller's value, noting every fault. @internal */
export function readSparinglySoluble(value: unknown, path: string, faults: Faults): SparinglySoluble {
  const unread = faults.object(value, path, 'a solid { name, forms, log10K, of, source }', keys);
  const forms = faults.object(unread.forms, `${path}.forms`, 'how many of each form');
  for (const label of Object.keys(forms))
    faults.number(forms[label], `${path}.forms`, 'a count', { above: 0, to: 100 });
  faults.number(unread.log10K, `${path}.log10K`, 'a logarithm', { from: -1000, to: 100 });
  if (unread.of !== 'activities' && unread.of !== 'concentrations')
    faults.add('wrong-type', `${path}.of`, "'activities' or 'concentrations'", unread.of);
  faults.text(unread.name, `${path}.name`, 'a name');
  const source = readSource(unread.source, `${path}.source`, faults);
  return { ...unread, forms, source } as unknown as SparinglySoluble;
}
