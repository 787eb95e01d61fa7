import { describe, expect, test } from 'vitest';
import * as acids from '../../src/acids.js';
import { works } from '../../src/bibliography.js';
import type { Source } from '../../src/source.js';
import { printFormula } from '../../src/substance/print-formula.js';
import type { Protolyte } from '../../src/substance/protolyte.js';
import reference from '../reference/acids.json' with { type: 'json' };
import { compositionIn } from '../substance/composition-in.js';

const catalogue: [string, Protolyte][] = Object.entries(acids);

/** The reference file's families with the same constants under our names. */
const families = reference.families.map((family) => ({
  ...family,
  id: family.slug.replace(/-(.)/g, (_, letter: string) => letter.toUpperCase()),
  // A first step that is always complete is left out: the family starts at the second form.
  complete: family.steps.filter((step) => 'fully_dissociated' in step).length,
}));

/** Where an alternative of the file is in use here, the work it is from; the file's own value is then the alternative. */
const preferred: Readonly<Record<string, string>> = { arsenic: 'RAPOSO2002' };

interface Constant {
  readonly step: number;
  readonly pKa: number;
  readonly source: string;
  readonly check: string;
}

const preferredOf = (slug: string, others: readonly Constant[], step: number): Constant | undefined =>
  others.find((one) => one.source === preferred[slug] && one.step === step);

describe('the catalogue of acids', () => {
  test('holds every family of the reference file, under its own id, and no other', () => {
    expect(catalogue.map(([key]) => key).sort()).toEqual(families.map(({ id }) => id).sort());
    for (const [key, { id }] of catalogue) expect(id).toBe(key);
    expect(catalogue.length).toBe(75);
    expect(catalogue.flatMap(([, { steps }]) => steps).length).toBe(120);
  });

  // Values: tests/reference/acids.json, which names each source; the page that was read is named there and in the catalogue.
  test.each(families)('has the constants of the reference file: $slug', (family) => {
    const { species, steps, alternatives } = get(family.id);
    const others: readonly Constant[] = ('alternatives' in family && family.alternatives) || [];
    expect(species[0]?.charge).toBe(family.charge_protonated - family.complete);
    expect(
      steps.map(({ pKa, dH, dCp, standardUncertainty, ionicStrength }) => [
        pKa,
        dH ?? null,
        dCp ?? null,
        standardUncertainty ?? null,
        ionicStrength ?? 0,
      ]),
    ).toEqual(
      family.steps
        .slice(family.complete)
        .map((step) => [
          preferredOf(family.slug, others, step.step)?.pKa ?? step.pKa_25C,
          step.dH_kJ_per_mol ?? null,
          step.dCp_J_per_mol_K ?? null,
          step.uncertainty_pKa ?? null,
          step.ionic_strength_mol_per_kg ?? 0,
        ]),
    );
    expect((alternatives ?? []).map(({ step, pKa }) => [step, pKa])).toEqual(
      others.map((one) => [
        one.step,
        one.source === preferred[family.slug] ? family.steps[one.step - 1]?.pKa_25C : one.pKa,
      ]),
    );
  });

  test.each(families)('calls published what was read, and from memory what was not: $slug', (family) => {
    const { steps, alternatives = [] } = get(family.id);
    const others: readonly Constant[] = ('alternatives' in family && family.alternatives) || [];
    for (const [index, step] of family.steps.slice(family.complete).entries()) {
      const { check } = preferredOf(family.slug, others, step.step) ?? step;
      expect(isPublished(steps[index]?.source)).toBe(check.startsWith('confirmed:'));
      if (step.dH_kJ_per_mol === undefined || step.dH_kJ_per_mol === null) continue;
      const thermal = steps[index]?.thermalSource ?? steps[index]?.source;
      expect(isPublished(thermal)).toBe(step.check_dH_dCp?.startsWith('confirmed:'));
    }
    for (const [index, one] of others.entries()) {
      const check = one.source === preferred[family.slug] ? family.steps[one.step - 1]?.check : one.check;
      expect(alternatives[index]?.source.kind !== 'fromMemory').toBe(check?.startsWith('confirmed:'));
    }
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
    expect(abbreviated.map(([key]) => key).sort()).toEqual([
      'aces',
      'ada',
      'bes',
      'bicine',
      'caps',
      'ches',
      'edta',
      'epps',
      'hepes',
      'mes',
      'mops',
      'mopso',
      'pipes',
      'taps',
      'tes',
      'tricine',
    ]);
  });

  test.each(catalogue)('%s prints without loss', (_, { species }) => {
    expect(new Set(species.map(({ formula }) => printFormula(formula))).size).toBe(species.length);
  });
});

function get(id: string): Protolyte {
  const protolyte = (acids as Readonly<Record<string, Protolyte>>)[id];
  if (protolyte === undefined) throw new Error(`no ${id}`);
  return protolyte;
}

const isPublished = (source: Source | undefined): boolean => source?.kind === 'published';

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
