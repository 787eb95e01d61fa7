import { chooseTransition, defineIndicator, type Indicator, InputError, indicators } from 'protolysis';
import { describe, expect, test } from 'vitest';

const source = { kind: 'commonPractice', note: 'invented for a test' } as const;
const plain: Indicator = {
  id: 'x',
  name: 'x',
  transition: { from: 4, to: 6 },
  acidColour: 'red',
  baseColour: 'yellow',
  source,
};

/** The paths of the faults of a call. */
function faultsOf(call: () => unknown): string[] {
  try {
    call();
  } catch (error) {
    if (error instanceof InputError) return error.issues.map(({ path, code }) => `${path}: ${code}`);
    throw error;
  }
  return [];
}

describe('defineIndicator', () => {
  test('gives back the same data', () => expect(defineIndicator(plain)).toEqual(plain));

  test('accepts the whole catalogue, which nothing reads at import, also after a trip through JSON', () => {
    for (const one of Object.values(indicators)) {
      const copy = JSON.parse(JSON.stringify(one));
      expect(copy).toEqual(one);
      expect(defineIndicator(copy)).toEqual(one);
    }
  });

  test.each([
    ['a range upside down', { transition: { from: 6, to: 4 } }, ['transition.to: conflict']],
    ['a range of no width', { transition: { from: 6, to: 6 } }, ['transition.to: conflict']],
    ['a range beyond the scale', { transition: { from: 6, to: 17 } }, ['transition.to: out-of-range']],
    ['no colour at all', { acidColour: 'colourless', baseColour: 'colourless' }, ['baseColour: conflict']],
    ['a key it does not know', { transitions: [] }, ['transitions: unknown-key']],
    [
      'a titration exponent outside the range',
      { titrationExponent: { pH: 7, source } },
      ['titrationExponent.pH: out-of-range'],
    ],
    [
      'one for a one-colour indicator',
      { acidColour: 'colourless', titrationExponent: { pH: 5, source } },
      ['titrationExponent: conflict'],
    ],
    [
      'bands of no width',
      { bands: { acid: [{ nm: 500, width: 0, absorbance: 1 }], base: [], source } },
      ['bands.acid[0].width: out-of-range'],
    ],
    [
      'bands beside parts',
      { bands: { acid: [], base: [], source }, parts: [{ indicator: plain, amount: 1 }] },
      ['parts: conflict'],
    ],
    [
      'a mixture of mixtures',
      { parts: [{ indicator: indicators.methylRedBromocresolGreen, amount: 1 }] },
      ['parts[0].indicator.parts: out-of-range'],
    ],
    [
      'several faults at once',
      { id: '', pKIn: Number.NaN, notes: [1] },
      ['id: out-of-range', 'pKIn: not-finite', 'notes[0]: wrong-type'],
    ],
  ])('refuses %s', (_, more, faults) =>
    expect(faultsOf(() => defineIndicator({ ...plain, ...more } as Indicator))).toEqual(faults),
  );

  test('ends on a mixture that holds itself', () => {
    const parts: { indicator: Indicator; amount: number }[] = [];
    const ring = { ...plain, parts };
    parts.push({ indicator: ring, amount: 1 });
    expect(faultsOf(() => defineIndicator(ring))).toEqual(['parts[0].indicator.parts: out-of-range']);
  });
});

describe('chooseTransition', () => {
  test('takes the range of a work, with its source, and keeps the one it replaces', () => {
    const { phenolphthalein } = indicators;
    const harris = chooseTransition(phenolphthalein, { work: 'harris-2016' });
    expect(harris.transition).toEqual({ from: 8, to: 9.6 });
    expect(harris.source).toMatchObject({ work: 'harris-2016' });
    const kept = harris.alternatives?.transitions ?? [];
    expect(kept).toContainEqual({ ...phenolphthalein.transition, source: phenolphthalein.source });
    expect(kept.length).toBe(phenolphthalein.alternatives?.transitions?.length);
  });

  test('goes back to where it came from', () => {
    const { phenolRed } = indicators;
    const there = chooseTransition(phenolRed, { work: 'crc-handbook' });
    const back = chooseTransition(there, {
      work: String('work' in phenolRed.source && phenolRed.source.work),
    });
    expect(back.transition).toEqual(phenolRed.transition);
    expect(back.source).toEqual(phenolRed.source);
  });

  test('keeps a titration exponent inside the new range and drops one outside it', () => {
    expect(chooseTransition(indicators.methylOrange, { work: 'crc-handbook' }).titrationExponent?.pH).toBe(4);
    const moved: Indicator = {
      ...plain,
      titrationExponent: { pH: 4.5, source },
      alternatives: {
        transitions: [{ from: 5, to: 7, source: { kind: 'published', work: 'talbot', where: 'x' } }],
      },
    };
    expect(chooseTransition(moved, { work: 'talbot' })).not.toHaveProperty('titrationExponent');
  });

  test('leaves pKIn with the source it had', () => {
    const own: Indicator = {
      ...plain,
      pKIn: 5.1,
      alternatives: {
        transitions: [{ from: 5, to: 7, source: { kind: 'published', work: 'talbot', where: 'x' } }],
      },
    };
    expect(chooseTransition(own, { work: 'talbot' }).pKInSource).toEqual(source);
  });

  test('names the works that have a range where this one has none', () =>
    expect(() => chooseTransition(indicators.indigoCarmine, { work: 'harris-2016' })).toThrow(
      "work is 'harris-2016'; give a work with a range of indigo carmine: junior-olympiad-guide, wikipedia-ph-indicator-2004",
    ));
});
