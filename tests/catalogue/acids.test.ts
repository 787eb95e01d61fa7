import { describe, expect, test } from 'vitest';
import * as acids from '../../src/acids.js';
import { works } from '../../src/bibliography.js';
import type { Source } from '../../src/source.js';
import { printFormula } from '../../src/substance/print-formula.js';
import type { Protolyte } from '../../src/substance/protolyte.js';
import { compositionIn } from '../substance/composition-in.js';
import { atomsOfAbbreviated } from './abbreviated.js';

const catalogue: [string, Protolyte][] = Object.entries(acids);

describe('the catalogue of acids', () => {
  test('holds each under its own id', () => {
    for (const [key, { id }] of catalogue) expect(id).toBe(key);
    expect(catalogue.length).toBeGreaterThan(70);
  });

  test('cites only works that are listed', () => {
    const cited = new Set(sourcesIn(acids).map((source) => ('work' in source ? source.work : undefined)));
    cited.delete(undefined);
    for (const work of cited) expect(works).toHaveProperty([String(work)]);
  });

  test('has notes where the steps are out of order, and has no such steps', () => {
    for (const [, { steps, notes = [] }] of catalogue) {
      const inOrder = steps.every(({ pKa }, index) => index === 0 || pKa >= (steps[index - 1]?.pKa ?? pKa));
      expect(notes.some((note) => note.includes('never prevails'))).toBe(!inOrder);
    }
  });

  test.each(catalogue)('%s: each form is the one before it less one proton', (_, { species }) => {
    for (const [index, { formula, charge }] of species.entries()) {
      expect(chargeOf(formula), formula).toBe(charge);
      const before = species[index - 1];
      if (before === undefined) continue;
      // Abbreviations such as HEPES have no composition; the reagents' test holds the sold form to its formula.
      const [more, less] = [compositionIn(before.formula), compositionIn(formula)];
      if (more === undefined || less === undefined) continue;
      // CO2(aq), SO2(aq) and B(OH)3 take up one water as they lose the proton.
      const waters = (less.get('O') ?? 0) - (more.get('O') ?? 0);
      expect([0, 1]).toContain(waters);
      if (waters === 1) expect(['CO2(aq)', 'SO2(aq)', 'B(OH)3']).toContain(before.formula);
      less.set('H', (less.get('H') ?? 0) - 2 * waters + 1);
      less.set('O', (less.get('O') ?? 0) - waters);
      expect(nonZero(less)).toEqual(nonZero(more));
    }
  });

  test('formulas have a composition, but for the abbreviations of the trade', () => {
    const abbreviated = catalogue.filter(([, { species }]) =>
      species.some(({ formula }) => !compositionIn(formula)),
    );
    expect(abbreviated.map(([key]) => key).sort()).toEqual(Object.keys(atomsOfAbbreviated));
  });

  test.each(catalogue)('%s prints without loss', (_, { species }) => {
    expect(new Set(species.map(({ formula }) => printFormula(formula))).size).toBe(species.length);
  });
});

function sourcesIn(value: object): Source[] {
  return Object.entries(value).flatMap(([key, item]) => {
    if (typeof item !== 'object' || item === null) return [];
    return /source$/i.test(key) ? [item as Source] : sourcesIn(item);
  });
}

/** By the plain notation: one charge bare, several in brackets. */
function chargeOf(formula: string): number {
  const [, bracketed, bare = ''] = /(?:\((\d+[+-])\)|([+-]))?(?:\(aq\))?$/.exec(formula) ?? [];
  const [, size = '0', sign = '+'] =
    /^(\d+)([+-])$/.exec(bracketed ?? (bare === '' ? '0+' : `1${bare}`)) ?? [];
  return Number(`${sign}${size}`) || 0;
}

function nonZero(composition: ReadonlyMap<string, number>): Record<string, number> {
  return Object.fromEntries([...composition].filter(([, count]) => count !== 0).sort());
}
