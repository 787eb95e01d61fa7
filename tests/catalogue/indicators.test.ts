import { type Indicator, indicators, type Source, works } from 'protolysis';
import { describe, expect, test } from 'vitest';
import reference from '../reference/indicators.json' with { type: 'json' };

const catalogue: [string, Indicator][] = Object.entries(indicators).sort(([a], [b]) => (a < b ? -1 : 1));

/** The reference file's works under our keys. */
const workOf: Readonly<Record<string, string>> = {
  CRC: 'crc-handbook',
  HARRIS: 'harris-2016',
  KOLT: 'kolthoff-1937',
  BISHOP: 'bishop-1972',
  SKOOG: 'skoog-2014',
  WIKI: 'wikipedia-ph-indicator-2007',
  WIKI04: 'wikipedia-ph-indicator-2004',
  TP: 'thai-pharmacopoeia',
  GUIDE: 'junior-olympiad-guide',
  ALB: 'alberta-data-booklet',
  SYD: 'sydney-data-sheet',
  OS: 'openstax-chemistry-2e',
  CLARK: 'clark-1996',
  MERCK: 'merck-table',
  PHYS: 'monk-2004',
};

const entries = reference.indicators.map((entry) => ({
  ...entry,
  id: entry.slug.replace(/-(.)/g, (_, letter: string) => letter.toUpperCase()),
}));

const get = (id: string): Indicator => {
  const found = catalogue.find(([key]) => key === id)?.[1];
  if (!found) return expect.unreachable(id);
  return found;
};
const citation = (source: Source | undefined, ...numbers: number[]): string =>
  [...numbers, source && 'work' in source ? source.work : '', source?.kind === 'published'].join(' ');

describe('the catalogue of indicators', () => {
  test('holds every entry of the reference file, under its own id, and no other', () => {
    expect(catalogue.map(([key]) => key).sort()).toEqual(entries.map(({ id }) => id).sort());
    for (const [key, { id }] of catalogue) expect(id).toBe(key);
    expect(catalogue.length).toBe(26);
  });

  // Values: tests/reference/indicators.json, which names each source and what was read.
  test.each(entries)(
    'has every range that a handbook prints, published where it was read: $slug',
    (entry) => {
      const { transition, source, alternatives } = get(entry.id);
      const ranges = [{ ...transition, source }, ...(alternatives?.transitions ?? [])];
      expect(ranges.map((range) => citation(range.source, range.from, range.to)).sort()).toEqual(
        entry.ranges
          .map(({ pH_low, pH_high, source: key, check }) =>
            [pH_low, pH_high, workOf[key], check.startsWith('confirmed:')].join(' '),
          )
          .sort(),
      );
    },
  );

  test.each(entries)('has every pKIn and titration exponent: $slug', (entry) => {
    const { pKIn, pKInSource, titrationExponent, alternatives } = get(entry.id);
    const values = [
      ...(pKIn === undefined ? [] : [{ pKIn, source: pKInSource }]),
      ...(alternatives?.pKIns ?? []),
      // what the file has as pKIn of the mixture is where its colour changes
      ...(titrationExponent && entry.pKIn_values.length === 1
        ? [{ pKIn: titrationExponent.pH, source: titrationExponent.source }]
        : []),
    ];
    expect(values.map((one) => citation(one.source, one.pKIn)).sort()).toEqual(
      entry.pKIn_values
        .map(({ pKIn: value, source: key, check }) =>
          [value, workOf[key], check.startsWith('confirmed:')].join(' '),
        )
        .sort(),
    );
  });

  test('takes the recommended range, where a work prints it', () => {
    const others = entries.filter(({ id, recommended }) => {
      const { transition } = get(id);
      return transition.from !== recommended.pH_low || transition.to !== recommended.pH_high;
    });
    // The file recommends 5.0 to 6.6 for it, which no work of its list prints; 4.8 to 6.4 was read in one.
    expect(others.map(({ id }) => id)).toEqual(['chlorophenolRed']);
  });

  test('takes the recommended pKIn, which is to be that at an ionic strength of 0.1 where there is one', () => {
    const choices = entries.filter(({ pKIn_values: values }) => values.length > 1);
    const others = choices.filter(({ id, recommended }) => get(id).pKIn !== recommended.pKIn);
    // For these two the file recommends one at zero ionic strength, against its own rule.
    expect(others.map(({ id }) => [id, get(id).pKIn])).toEqual([
      ['bromophenolBlue', 3.85],
      ['chlorophenolRed', 6],
    ]);
  });

  test.each(entries)('has the colours, one of them colourless for a one-colour indicator: $slug', (entry) => {
    const { acidColour, baseColour } = get(entry.id);
    expect([acidColour, baseColour]).toEqual([entry.acid_colour, entry.base_colour]);
    expect([acidColour, baseColour].includes('colourless')).toBe(entry.kind === 'one-colour');
  });

  test('cites only works that are known', () => {
    for (const [, { source, pKInSource, alternatives }] of catalogue)
      for (const one of [
        source,
        pKInSource,
        ...(alternatives?.transitions ?? []).map((range) => range.source),
      ])
        if (one && 'work' in one) expect(Object.keys(works)).toContain(one.work);
  });

  // The rule that a change shows over about pKIn ± 1 (OpenStax, Chemistry 2e, section 14.7), checked against the ranges:
  // in use they are 0.7 to 2.2 wide, litmus, a mixture of dyes, 3.8.
  test('changes over at most 2.2 units of pH, but for litmus', () => {
    const broad = catalogue.filter(([, { transition }]) => transition.to - transition.from > 2.2 + 1e-9);
    expect(broad.map(([key]) => key)).toEqual(['litmus']);
  });

  test('has cautions that defer to the safety data sheet', () => {
    for (const [, { hazard }] of catalogue)
      if (hazard) expect(hazard).toMatch(/See the safety data sheet\.$/);
    expect(get('methylYellow').hazard).toMatch(/cancer/);
    expect(get('nitramine').hazard).toMatch(/explosive/);
  });
});
