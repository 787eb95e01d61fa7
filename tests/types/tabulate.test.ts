import {
  type ColumnPath,
  type Equilibrium,
  equilibrate,
  type IndicatorRanking,
  type Solution,
  type Titration,
  tabulate,
} from 'protolysis';
import { describe, expectTypeOf, test } from 'vitest';

declare const titration: Titration;
declare const equilibrium: Equilibrium;
declare const ranking: IndicatorRanking;
declare const solution: Solution;
declare const deep: readonly { a: { b: { c: number; d: { e: number } } } }[];
declare const mixed: readonly { value: number | string | null; mL?: number | undefined; none: null }[];

describe('the compiler', () => {
  test('refuses every column of what has none', () => {
    expectTypeOf<ColumnPath<object>>().toEqualTypeOf<never>();
    // @ts-expect-error a titration holds no columns; its points are rows
    () => tabulate(titration, { mL: 2 });
    // @ts-expect-error nor does an equilibrium; its species are
    () => tabulate(equilibrium, { pH: 2 });
    // @ts-expect-error nor a ranking
    () => tabulate(ranking, { score: 2 });
    // @ts-expect-error nor a solution
    () => tabulate(solution, { mL: 2 });
    () => tabulate(equilibrate(solution).species, { formula: 'text', molar: 4 });
  });

  test('takes paths of three keys and no more', () => {
    expectTypeOf<ColumnPath<(typeof deep)[number]>>().toEqualTypeOf<'a.b.c'>();
    () => tabulate(deep, { 'a.b.c': 2 });
    // @ts-expect-error four keys
    () => tabulate(deep, { 'a.b.d.e': 2 });
    // @ts-expect-error four keys, where no shorter path leads to a value
    () => tabulate([{ a: { b: { c: { d: 1 } } } }], { 'a.b.c.d': 2 });
  });

  test('wants decimals for a number and "text" for a text', () => {
    () => tabulate(titration.equivalencePoints, { mL: 2, reaction: 'text' });
    () => tabulate(titration.curve({ every: 1, upTo: 2 }), { mL: 2, pH: 2 });
    () => tabulate(mixed, { value: 2, mL: 1, none: 'text' });
    () => tabulate(mixed, { value: 'text', none: 1 });
    // @ts-expect-error a volume is no text
    () => tabulate(titration.equivalencePoints, { mL: 'text' });
    // @ts-expect-error a reaction has no decimals
    () => tabulate(titration.equivalencePoints, { reaction: 2 });
    // @ts-expect-error nor is a column of a curve text
    () => tabulate(titration.curve({ every: 1, upTo: 2 }), { pH: 'text' });
  });

  test('takes rows of which nothing is known', () => {
    // biome-ignore lint/suspicious/noExplicitAny: what JSON.parse gives
    (parsed: any) => tabulate(parsed, { mL: 2, reaction: 'text' });
    (rows: Record<string, number>[]) => tabulate(rows, { mL: 2 });
  });
});
