import type { Cell, RowOf } from './rows.js';

/** How a column is printed: a number to so many decimals, or text as it is. */
export type ColumnFormat = number | 'text';

/** The same with a heading of your own, such as `burette, mL`. */
export interface ColumnWithHeading<Format extends ColumnFormat = ColumnFormat> {
  readonly as: Format;
  readonly heading: string;
}

/** A row of a table, whether it is given as rows or as columns. */
export type RowIn<Table> = Table extends readonly (infer Row)[] ? Row : RowOf<Table>;

/** The cells of a row, each as its path and what it holds; those inside an object or a list up to three keys deep. */
type CellOf<Row, Depth extends readonly unknown[] = []> = {
  [Key in keyof Row & (string | number)]: CellIn<NonNullable<Row[Key]>, `${Key}`, [...Depth, 0]>;
}[keyof Row & (string | number)];

type CellIn<Value, Path extends string, Depth extends readonly unknown[]> = [Value] extends [Cell]
  ? readonly [Path, Value]
  : Depth['length'] extends 3
    ? never
    : Value extends readonly (infer Item)[]
      ? CellIn<NonNullable<Item>, `${Path}.${number}`, [...Depth, 0]>
      : Value extends (...given: never[]) => unknown
        ? never
        : Value extends object
          ? Under<Path, CellOf<Value, Depth>>
          : never;

type Under<Path extends string, Inner> = Inner extends readonly [infer Rest extends string, infer Value]
  ? readonly [`${Path}.${Rest}`, Value]
  : never;

/**
 * The keys of a row whose values can be printed; those inside of an object or a list by their path of up to three keys,
 * such as `useful.from`.
 */
export type ColumnPath<Row> = CellOf<Row>[0];

/** How a value is printed: a number to so many decimals, a text as it is; where a column holds nothing, either. */
type FormatOf<Value> = [Value] extends [never] ? ColumnFormat : Value extends number ? number : 'text';

type OrWithHeading<Format extends ColumnFormat> = Format | ColumnWithHeading<Format>;

/**
 * The columns to print, in order: each number with its decimals, 0 to 15, each text as `'text'`; either
 * also as `{ as, heading }`. Of rows of which the
 * compiler knows nothing, any.
 */
export type ColumnFormats<Row> = unknown extends Row
  ? Readonly<Record<string, OrWithHeading<ColumnFormat>>>
  : [ColumnPath<Row>] extends [never]
    ? Readonly<Record<string, never>>
    : { readonly [Found in CellOf<Row> as Found[0]]?: OrWithHeading<FormatOf<Found[1]>> };
