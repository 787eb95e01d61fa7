import type { Decimal } from 'decimal.js';
import type { Faults } from '../input/faults.js';
import { readFlag } from '../input/read-flag.js';
import type { ColumnKind } from './column-kinds.js';
import { exactDecimal, toDecimal } from './exact-decimal.js';

/** How readings were written down. */
export interface ReadingOptions {
  /**
   * What stands in the column of volumes: running totals (the default), readings of the burette, or what was added each
   * time.
   */
  readonly volumes?: 'totals' | 'burette' | 'increments';
  /** mL, the burette's reading before the first drop; needed with `volumes: 'burette'`, and only there. */
  readonly initial?: number | string;
  /** What each column of a text holds, whatever its headings say; by default as they say, or volume, pH, seconds. */
  readonly columns?: readonly ColumnKind[];
  /** Whether to mend what can be mended, and say what was changed; false by default. */
  readonly repair?: boolean;
}

/** Options that have been read. @internal */
export interface ReadingOptionsRead {
  readonly volumes: 'totals' | 'burette' | 'increments';
  /** Whether the caller said what the volumes are. */
  readonly stated: boolean;
  readonly initial: Decimal;
  readonly columns: readonly ColumnKind[] | undefined;
  readonly repair: boolean;
}

/** Reads how readings were written down. @internal */
export function readReadingOptions(value: unknown, faults: Faults): ReadingOptionsRead {
  const unread = faults.object(value, 'options', 'options', ['volumes', 'initial', 'columns', 'repair']);
  const { volumes = 'totals', initial, columns, repair } = unread;
  if (volumes !== 'totals' && volumes !== 'burette' && volumes !== 'increments')
    faults.add('wrong-type', 'options.volumes', "'totals', 'burette' or 'increments'", volumes);
  if (volumes === 'burette' && initial === undefined)
    faults.add('missing', 'options.initial', "the burette's first reading in mL", initial);
  if (volumes !== 'burette' && initial !== undefined)
    faults.add('conflict', 'options.initial', "a first reading only with volumes: 'burette'", initial);
  return {
    volumes: volumes as ReadingOptionsRead['volumes'],
    stated: unread.volumes !== undefined,
    initial: initial === undefined ? toDecimal(0) : readInitial(initial, faults),
    columns: columns === undefined ? undefined : readKinds(columns, faults),
    repair: readFlag(repair, 'options.repair', faults),
  };
}

function readInitial(value: unknown, faults: Faults): Decimal {
  const path = 'options.initial';
  if (typeof value === 'number')
    return toDecimal(faults.number(value, path, 'a volume in mL', { from: 0, to: 1e6 }));
  const read = typeof value === 'string' ? exactDecimal(value.trim()) : undefined;
  if (read?.gte(0) && read.lte(1e6)) return read;
  faults.add('wrong-type', path, 'a volume in mL, from 0 to 1e6, as a number or as typed', value);
  return toDecimal(0);
}

function readKinds(value: unknown, faults: Faults): readonly ColumnKind[] {
  const kinds = faults.list(value, 'options.columns', "a list of 'mL', 'pH', 'seconds' and 'skip'", 2, 50);
  for (const [k, kind] of kinds.entries())
    if (kind !== 'mL' && kind !== 'pH' && kind !== 'seconds' && kind !== 'skip')
      faults.add('wrong-type', `options.columns[${k}]`, "'mL', 'pH', 'seconds' or 'skip'", kind);
  for (const kind of ['mL', 'pH', 'seconds'])
    if (kinds.filter((each) => each === kind).length > 1 || (kind !== 'seconds' && !kinds.includes(kind)))
      faults.add('conflict', 'options.columns', `one column '${kind}'`, value);
  return kinds as readonly ColumnKind[];
}
