// Set-ups in and points out as columns of Apache Arrow, for whatever dataframe engine is at hand.
import { DataType, makeTable, Precision } from 'apache-arrow';
import { pHsAlong, volumes } from '../curves.mjs';

/**
 * For each batch of set-ups, with columns `purity` and `molar`, a batch of points with columns `curve`, `mL` and `pH`: `curve` is
 * the row of the set-up, from 0 on. Batch by batch, so that memory does not grow with their number.
 *
 * @param {AsyncIterable<import('apache-arrow').RecordBatch> | Iterable<import('apache-arrow').RecordBatch>} setups
 */
export async function* pointsOf(setups) {
  let from = 0;
  for await (const setup of setups) {
    const count = setup.numRows;
    const pH = pHsAlong({ purity: numbersOf(setup, 'purity'), molar: numbersOf(setup, 'molar') });
    const curve = Int32Array.from(pH, (_, row) => from + (row % count));
    const mL = Float64Array.from(pH, (_, row) => volumes[Math.floor(row / count)]);
    yield* makeTable({ curve, mL, pH }).batches; // the arrays as they are
    from += count;
  }
}

/** The memory of a column itself, not a copy: it must be of 64-bit floats, without nulls, which would be read as numbers. */
export function numbersOf(batch, name) {
  const column = batch.getChild(name);
  if (!column) throw new RangeError(`no column ${name}; there are ${batch.schema.names.join(', ')}`);
  const { type, nullCount } = column;
  if (!DataType.isFloat(type) || type.precision !== Precision.DOUBLE)
    throw new RangeError(`column ${name} is of ${type}; cast it to Float64`);
  if (nullCount > 0) throw new RangeError(`column ${name} has ${nullCount} nulls; fill or drop them`);
  return column.toArray();
}
