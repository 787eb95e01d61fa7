import type { Decimal } from 'decimal.js';
import type * as protolysis from 'protolysis';
import type * as colour from 'protolysis/colour';
import type * as exact from 'protolysis/exact';
import type * as handout from 'protolysis/handout';
import type * as measurement from 'protolysis/measurement';
import type * as plot from 'protolysis/plot';
import { expectTypeOf, test } from 'vitest';

type Same<A, B> = (<T>() => T extends A ? 1 : 2) extends <T>() => T extends B ? 1 : 2 ? true : false;

/** What holds no data of ours. A method may be assigned as far as the compiler goes: the results are frozen as well. */
type Leaf = string | number | boolean | bigint | symbol | null | undefined | Method | Decimal;
type Method = (...values: never[]) => unknown;

/** The keys of plain data, five levels deep, that the compiler would let a caller assign; `push` for a list that can grow. */
type Changeable<Data, Level extends 0[] = []> = Level['length'] extends 5
  ? never
  : Data extends Leaf
    ? never
    : Data extends readonly (infer Item)[]
      ? Data extends unknown[]
        ? 'push'
        : Changeable<Item, [...Level, 0]>
      : {
          [Key in keyof Data]-?: NonNullable<Data[Key]> extends Method
            ? never
            : Same<Pick<Data, Key>, Readonly<Pick<Data, Key>>> extends true
              ? Changeable<Data[Key], [...Level, 0]>
              : Key;
        }[keyof Data];

/** The exports of an entry whose answer, or which themselves, can be changed. */
type Faults<Entry> = {
  [Name in keyof Entry]: Entry[Name] extends abstract new (
    ...values: never[]
  ) => unknown
    ? never // a class
    : Changeable<
          Entry[Name] extends (...values: never[]) => infer Answer ? Awaited<Answer> : Entry[Name]
        > extends never
      ? never
      : Name;
}[keyof Entry];

test('what any function answers, and every constant, is readonly through and through', () => {
  expectTypeOf<Changeable<{ readonly a: readonly { b: 1 }[] }>>().toEqualTypeOf<'b'>();
  expectTypeOf<Changeable<{ readonly a: string[] }>>().toEqualTypeOf<'push'>();
  expectTypeOf<Faults<typeof protolysis>>().toEqualTypeOf<'pHsOf'>(); // a column to work with
  expectTypeOf<Faults<typeof colour>>().toEqualTypeOf<never>();
  expectTypeOf<Faults<typeof exact>>().toEqualTypeOf<never>();
  expectTypeOf<Faults<typeof measurement>>().toEqualTypeOf<never>();
  expectTypeOf<Faults<typeof plot>>().toEqualTypeOf<never>();
  expectTypeOf<Faults<typeof handout>>().toEqualTypeOf<never>();
});
