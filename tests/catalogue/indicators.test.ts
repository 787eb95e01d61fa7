import { debyeHuckelAt, type Indicator, indicators, type PublishedSource, works } from 'protolysis';
import { describe, expect, test } from 'vitest';
import other from '../reference/indicators-in-other-works.json' with { type: 'json' };

const catalogue: [string, Indicator][] = Object.entries(indicators).sort(([a], [b]) => (a < b ? -1 : 1));

const get = (id: string): Indicator => {
  const found = catalogue.find(([key]) => key === id)?.[1];
  if (!found) return expect.unreachable(id);
  return found;
};

/** Pages under which several works are cited: the works themselves, or what `checked` says of a handbook. */
const pages = [
  [/usp-?32/i, 'USP 32'],
  [/usp-32|USP 32/, 'USP 32'],
  [/junior-olympiad|Junior Science Olympiad/, 'a teaching guide'],
  [/wikipedia-ph-indicator-2004|2004 encyclopedia/, 'the encyclopedia table of 2004'],
  [/wikipedia-ph-indicator-2007|table of 2007|easychem/, 'the encyclopedia table of 2007'],
  [/article on universal indicator/, 'the article on universal indicator'],
] as const;

/** Where a published range was read. */
function pageOf({ work, where, checked }: PublishedSource): string {
  const said = `${work} ${checked ?? ''}`;
  return pages.find(([pattern]) => pattern.test(said))?.[1] ?? `${work}, ${where}`;
}

describe('the catalogue of indicators', () => {
  test('holds each under its own id', () => {
    for (const [key, { id }] of catalogue) expect(id).toBe(key);
    expect(catalogue.length).toBeGreaterThan(25);
  });

  // Values of works and pages other than those that the catalogue cites for its own: tests/reference/indicators-in-other-works.json.
  test('has ranges whose ends agree with other printed works within 0.4, but for two', () => {
    const apart = other.ranges.filter(({ indicator, from, to }) => {
      const { transition } = get(indicator);
      return !(Math.abs(transition.from - from) <= 0.41 && Math.abs(transition.to - to) <= 0.41);
    });
    expect(apart.map(({ indicator, from, to }) => `${indicator} ${from} to ${to}`).sort()).toEqual([
      'chlorophenolRed 5.4 to 6.8', // an encyclopedia; two handbooks print 4.8 and 5.2
      'thymolphthalein 8.6 to 10', // a pharmacopoeia, which calls the first blue
    ]);
  });

  test('has pKIn that agree with other printed works within 0.3, but where the medium or the purity of the dye differs', () => {
    const apart = other.pKIns.filter(
      ({ indicator, pKIn }) => !(Math.abs((get(indicator).pKIn ?? Number.NaN) - pKIn) <= 0.31),
    );
    expect(apart.map(({ indicator, pKIn }) => `${indicator} ${pKIn}`).sort()).toEqual([
      'bromocresolPurple 6.494', // zero ionic strength; 6.12 at 0.1 mol/L
      'mCresolPurple 8.6606', // zero ionic strength; 8.32 at about 0.1 mol/L
      'methylOrange 4.2', // one teaching guide, against 3.4 to 3.7 elsewhere
      'phenolRed 7.4', // one teaching guide, against 7.8 to 8.0 elsewhere
    ]);
  });

  // Sulfonephthaleins lose a proton from HIn− to In2−: by the Davies law pKIn is 3·A·(√I/(1 + √I) − 0.3·I) lower at an
  // ionic strength I of 0.1. Within 0.1: 0.05 of that law for double ions at 0.1 mol/L, and
  // 0.05 of the dye, which is purified in the one work and not in the other (both common practice).
  test.each([
    ['bromocresolPurple', 6.494],
    ['mCresolPurple', 8.6606],
    ['phenolRed', 8.034],
    ['phenolRed', 8.0642],
  ] as const)('has for %s the pKIn at 0.1 mol/L that %d at zero ionic strength makes', (id, atZero) => {
    expect(other.pKIns).toContainEqual(expect.objectContaining({ indicator: id, pKIn: atZero }));
    const root = Math.sqrt(0.1);
    const lower = 3 * debyeHuckelAt(25).A * (root / (1 + root) - 0.3 * 0.1);
    const apart = Math.abs((get(id).pKIn ?? Number.NaN) - (atZero - lower));
    expect(apart).toBeLessThan(0.1);
  });

  test('cites an encyclopedia for the range of one indicator alone, of which no handbook is known', () => {
    const cited = catalogue.filter(
      ([, { source }]) => 'work' in source && /wikipedia/.test(`${source.work}`),
    );
    expect(cited.map(([key]) => key)).toEqual(['methylRedBromocresolGreen']);
  });

  test('counts no page twice as a witness of a range', () => {
    const twice = catalogue.flatMap(([key, { transition, source, alternatives }]) => {
      const ranges = [{ ...transition, source }, ...(alternatives?.transitions ?? [])];
      const read = ranges.flatMap(({ from, to, source: one }) =>
        one.kind === 'published' ? [`${key} ${from} to ${to} in ${pageOf(one)}`] : [],
      );
      return read.filter((witness, k) => read.indexOf(witness) !== k);
    });
    expect(twice).toEqual([]);
  });

  test('calls one-colour what is colourless on one side', () => {
    const oneColour = catalogue.filter(([, { acidColour, baseColour }]) =>
      [acidColour, baseColour].includes('colourless'),
    );
    expect(oneColour.map(([key]) => key)).toEqual([
      'nitramine',
      'oCresolphthalein',
      'pNitrophenol',
      'phenolphthalein',
      'thymolphthalein',
    ]);
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

  test('makes phenolphthalein up below the limit that its hazard names', () => {
    const { stock, hazard } = get('phenolphthalein');
    const [, grams] = /^([\d.]+) g .*made up to 100 mL/.exec(stock?.text ?? '') ?? [];
    const [, limit] = /from ([\d.]+) % on/.exec(hazard ?? '') ?? [];
    expect(Number(grams)).toBeLessThan(Number(limit));
    expect(hazard).toContain(`stock solution of ${grams} %`);
  });
});
