import { describe, expect, test } from 'vitest';
import { works } from '../../src/bibliography.js';
import type { Element } from '../../src/catalogue/atomic-weights.js';
import * as reagents from '../../src/reagents.js';
import { molarMassOf } from '../../src/substance/molar-mass.js';
import type { Reagent } from '../../src/substance/reagent.js';
import weightsReference from '../reference/atomic-weights.json' with { type: 'json' };
import { compositionIn } from '../substance/composition-in.js';
import { atomsOfAbbreviated } from './abbreviated.js';

const catalogue: [string, Reagent][] = Object.entries(reagents);

describe('the catalogue of reagents', () => {
  test('names each once, under its own id', () => {
    for (const [key, { id }] of catalogue) expect(id).toBe(key);
    expect(new Set(catalogue.map(([, { name }]) => name)).size).toBe(catalogue.length);
    expect(new Set(catalogue.map(([, { formula }]) => formula)).size).toBe(catalogue.length);
    expect(catalogue.length).toBeGreaterThan(100);
  });

  test.each(catalogue)(
    '%s: the formula is that of its parts, made neutral by protons, and water',
    (_, reagent) => {
      const left = new Map(compositionIn(reagent.formula ?? ''));
      expect(left.size).toBeGreaterThan(0);
      const take = (element: Element, count: number): unknown =>
        left.set(element, (left.get(element) ?? 0) - count);
      let charge = 0;
      for (const { protolyte, count } of reagent.protolytes) {
        charge += count * (protolyte.species[0]?.charge ?? Number.NaN);
        for (const [element, atoms] of mostProtonated(protolyte.id, protolyte.species[0]?.formula ?? ''))
          take(element, count * atoms);
      }
      for (const { ion, count } of reagent.ions) {
        charge += count * ion.charge;
        for (const [element, atoms] of compositionIn(ion.formula) ?? []) take(element, count * atoms);
      }
      take('H', -charge);

      // What is left is water: of hydration, of a hydroxide, of CO2 as it becomes a carbonate, or (fewer) what a
      // tetraborate takes up.
      const water = left.get('O') ?? 0;
      for (const [element, count] of left)
        expect(count, element).toBe(element === 'O' ? water : element === 'H' ? 2 * water : 0);
      const hydroxides = Number(/\(OH\)(\d)$/.exec(reagent.formula?.split('·')[0] ?? '')?.[1] ?? 1);
      const base = reagent.protolytes.length === 0 && charge > 0 ? hydroxides : 0;
      const tetraborate = reagent.formula?.startsWith('Na2B4O7') ? -5 : 0;
      const hydrated =
        reagent.protolytes[0]?.protolyte.id === 'carbonic' && reagent.formula !== 'CO2' ? 1 : 0;
      expect(water).toBe(hydrateWater(reagent.formula ?? '') + base + tetraborate + hydrated);
    },
  );

  test.each(catalogue)('%s is named after its hydrate water', (_, { name, formula = '' }) => {
    const prefixes = {
      mono: 1,
      sesqui: 1.5,
      di: 2,
      tri: 3,
      tetra: 4,
      hexa: 6,
      hepta: 7,
      octa: 8,
      deca: 10,
      dodeca: 12,
    };
    const [, prefix] = / (\w+)hydrate\)?$/.exec(name) ?? [];
    expect(hydrateWater(formula)).toBe(prefix === undefined ? 0 : prefixes[prefix as keyof typeof prefixes]);
  });

  test.each(catalogue)('%s weighs what its formula weighs', (_, { formula = '', molarMass }) => {
    expect(molarMass).toBe(molarMassOf(formula));
  });

  // tests/reference/atomic-weights.json: summed from the weights of 2021 by another program.
  test('has the molar masses of the reference file', () => {
    const known = weightsReference.reagents.flatMap(({ name, molar_mass_g_per_mol }) => {
      const reagent = catalogue.find(([, one]) => one.name === name)?.[1];
      return reagent === undefined ? [] : [[name, reagent.molarMass, molar_mass_g_per_mol] as const];
    });
    for (const [name, ours, theirs] of known) expect(ours, name).toBe(theirs);
    expect(known.length).toBeGreaterThan(35);
  });

  test('survives JSON whole', () => {
    expect(JSON.parse(JSON.stringify(reagents))).toEqual({ ...reagents });
  });

  test('gives the limits in its cautions a source, and its cautions no limit without one', () => {
    for (const [key, { hazard = '' }] of catalogue) {
      const { words, source } = typeof hazard === 'string' ? { words: hazard, source: undefined } : hazard;
      expect(words, key).not.toMatch(/\d %/);
      if (source !== undefined && 'work' in source) expect(works).toHaveProperty([String(source.work)]);
    }
  });

  test('has cautions for every strong acid and base and other corrosives', () => {
    const corrosive = /acid$|hydroxide|^trisodium phosphate|^tripotassium phosphate|^ammonia$|carbonate/;
    const harmless = ['ascorbic acid'];
    for (const [, { name, hazard }] of catalogue)
      if (corrosive.test(name) && !harmless.includes(name)) expect(hazard, name).toBeDefined();
  });
});

function hydrateWater(formula: string): number {
  const [, factor] = /·([\d.]*)H2O$/.exec(formula) ?? [];
  return factor === undefined ? 0 : Number(factor || 1);
}

/** Of the family's first form. */
const mostProtonated = (id: string, formula: string): ReadonlyMap<Element, number> =>
  compositionIn(atomsOfAbbreviated[id] ?? formula) ?? new Map();
