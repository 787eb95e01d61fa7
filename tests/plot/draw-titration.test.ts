import { flaskColours, indicators, makeSolution, reagents, scoreIndicator, titrate } from 'protolysis';
import { drawTitration } from 'protolysis/plot';
import { describe, expect, test } from 'vitest';
import { faultsOf } from '../faults-of.js';
import { attribute, curvesOf, overlapsIn, textsOf } from './texts-of.js';

/** The invented pool powder: 0.2000 g, 95 % sodium carbonate. */
const titration = titrate({
  analyte: makeSolution({
    mL: 50,
    contents: [{ reagent: reagents.sodiumCarbonate, grams: 0.2, purity: 0.95 }],
  }),
  titrant: makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] }),
});
const upTo = 50;

/** From px back to the units of an axis, by two of its printed numbers. */
function readerOf(svg: string, axis: 'x' | 'y') {
  const ticks = textsOf(svg).filter(({ text, isInside }) => /^[−\d.]+$/.test(text) && !isInside);
  const under = Math.max(...ticks.filter(({ text }) => text === '50').map(({ y }) => y));
  const chosen = ticks.filter(({ y }) => (axis === 'x' ? y === under : y < under - 5));
  const [a, b] = [chosen[0], chosen.at(-1)] as [(typeof ticks)[0], (typeof ticks)[0]];
  const at = (tick: typeof a) => (axis === 'x' ? tick.x : tick.y);
  return (px: number) =>
    Number(a.text) + ((px - at(a)) * (Number(b.text) - Number(a.text))) / (at(b) - at(a));
}

test.each([
  [1e-9, '1e−9'],
  [1e9, '1000000000'],
])('the figures of an axis are written as its labels are, for a flask of %f mL', (mL, end) => {
  const analyte = makeSolution({ mL, contents: [{ reagent: reagents.aceticAcid, molar: 0.1 }] });
  const titrant = makeSolution({ contents: [{ reagent: reagents.sodiumHydroxide, molar: 0.1 }] });
  const texts = textsOf(drawTitration(titrate({ analyte, titrant })).svg).map(({ text }) => text);
  expect(texts).toContain(end);
  expect(texts.filter((text) => /e[+-]/.test(text))).toEqual([]);
});

describe('the curve of a picture', () => {
  const { svg } = drawTitration(titration, { upTo });
  const [mLAt, pHAt] = [readerOf(svg, 'x'), readerOf(svg, 'y')];

  test('shows, read off its own axes, the pH of the titration', () => {
    const [curve] = curvesOf(svg);
    expect(curve?.length).toBeGreaterThan(100);
    for (const [x, y] of curve ?? []) {
      const mL = mLAt(x);
      // numbers stand 4 px below the line that they name; the curve is within half a pixel of its px, up or across
      const perPx = Math.abs(pHAt(1) - pHAt(0));
      const across =
        Math.abs(titration.slopeAt(Math.min(Math.max(mL, 0), upTo))) * Math.abs(mLAt(1) - mLAt(0));
      const pH = titration.pHAt(Math.min(Math.max(mL, 0), upTo));
      expect(Math.abs(pHAt(y + 4) - pH)).toBeLessThan(0.5 * perPx + 0.1 * across + 0.01);
    }
  });

  test('has a filled diamond at each equivalence point and a ring at each point half-way', () => {
    const diamonds = [...svg.matchAll(/<path d="M([\d.]+),([\d.]+)[^"]*Z" fill="#16202c"/g)];
    expect(diamonds.map(([, x]) => mLAt(Number(x)))).toEqual(
      titration.equivalencePoints.map(({ mL }) => expect.closeTo(mL, 1)),
    );
    const rings = [...svg.matchAll(/<circle [^>]*r="4"[^>]*>/g)].map(([tag]) => tag);
    expect(rings.map((tag) => mLAt(Number(attribute(tag, 'cx'))))).toEqual(
      titration.halfEquivalencePoints.map(({ mL }) => expect.closeTo(mL, 1)),
    );
  });

  test('labels them where they stand, with volume and pH', () => {
    const texts = textsOf(svg).map(({ text }) => text);
    expect(texts).toContain('17.93\u00A0mL, pH\u00A08.34');
    expect(texts).toContain('35.85\u00A0mL, pH\u00A04.02');
    expect(texts.filter((text) => text === 'equivalence')).toHaveLength(2);
    expect(texts.filter((text) => text === 'half-equivalence')).toHaveLength(2);
  });

  test('has a dot for each addition', () => {
    const additions = drawTitration(titration, { additions: { every: 0.5, upTo: 42 } }).svg;
    expect(additions.match(/<circle [^>]*r="2"/g)).toHaveLength(85);
  });

  test('has the slope in a panel of its own, with its unit', () => {
    const slope = drawTitration(titration, { slope: true });
    expect(textsOf(slope.svg).map(({ text }) => text)).toContain('slope dpH/dV, per mL');
    expect(curvesOf(slope.svg)).toHaveLength(2);
  });
});

describe('the strip of an indicator', () => {
  const { svg, description } = drawTitration(titration, { upTo, indicators: [indicators.methylOrange] });
  const mLAt = readerOf(svg, 'x');
  const cells = [...svg.matchAll(/<rect [^>]*shape-rendering[^>]*>/g)].map(([tag]) => ({
    from: mLAt(Number(attribute(tag, 'x'))),
    to: mLAt(Number(attribute(tag, 'x')) + Number(attribute(tag, 'width'))),
    hex: attribute(tag, 'fill'),
  }));

  test('is covered with the colours of the flask', () => {
    // px are written to a hundredth, which is a thousandth of a mL here
    expect(cells[0]?.from).toBeCloseTo(0, 2);
    expect(cells.at(-1)?.to).toBeCloseTo(upTo, 2);
    for (const [k, cell] of cells.entries()) {
      if (k > 0) expect(cell.from).toBeCloseTo(cells[k - 1]?.to ?? Number.NaN, 2);
      const first = cell.from + (0.5 / 600) * upTo; // a run has the colour of its first cell
      const [hex = ''] = flaskColours(
        { mL: [first], pH: [titration.pHAt(first)] },
        indicators.methylOrange,
      ).hex;
      for (const at of [1, 3, 5])
        expect(
          Math.abs(
            Number.parseInt(hex.slice(at, at + 2), 16) - Number.parseInt(cell.hex.slice(at, at + 2), 16),
          ),
        ).toBeLessThanOrEqual(1);
    }
  });

  test('marks the change that the score of the indicator gives', () => {
    const { change } = scoreIndicator(titration, indicators.methylOrange);
    expect(change.from).toBeCloseTo(35.69, 2);
    const text = `changes ${change.from?.toFixed(2)} to ${change.to?.toFixed(2)} mL`;
    expect(textsOf(svg).map((one) => one.text)).toContain(text);
    expect(description).toContain(`methyl orange: yellow to red; ${text}.`);
  });

  test('says so where pH never gets into the range', () => {
    const early = drawTitration(titration, { upTo: 10, indicators: [indicators.methylOrange] });
    expect(textsOf(early.svg).map(({ text }) => text)).toContain(
      'methyl orange: yellow throughout; pH stays outside of its range, 3.1 to 4.4',
    );
  });

  test('says so where a change has begun in the sample, or is not complete', () => {
    const half = drawTitration(titration, { upTo: 15, indicators: [indicators.phenolphthalein] });
    expect(textsOf(half.svg).some(({ text }) => text.startsWith('changing from 12.1'))).toBe(true);
    const alizarin = drawTitration(titration, { upTo, indicators: [indicators.alizarinYellowR] });
    expect(textsOf(alizarin.svg).some(({ text }) => text.startsWith('changing until '))).toBe(true);
  });
});

describe('a picture refuses', () => {
  test.each([
    [{ width: 100 }, 'options.width'],
    [{ upTo: 0 }, 'options.upTo'],
    [{ slope: 'yes' }, 'options.slope'],
    [{ additions: { every: 0.001, upTo: 50 } }, 'options.additions'],
    [{ additions: { maxStep: 0.1, upTo: 50 } }, 'options.additions.maxStep'],
    [{ upTo: 10, additions: { every: 1, upTo: 20 } }, 'options.additions'],
    [{ additions: [1, 2, 3] }, 'options.additions'],
    [{ envelope: { name: 'x', mL: [0, 1], lower: [8, 8], upper: [9, 7] } }, 'options.envelope.lower[1]'],
    [{ envelope: { name: 'x', mL: [1, 0], lower: [8, 8], upper: [9, 9] } }, 'options.envelope.mL[1]'],
    [{ words: { equivalents: 'x' } }, 'options.words.equivalents'],
    [{ indicators: Array(13).fill(indicators.methylOrange) }, 'options.indicators'],
  ])('%j', (options, path) =>
    expect(faultsOf(() => drawTitration(titration, options as never)).map((one) => one.path)).toContain(path),
  );
});

test('the check on overlaps finds two texts on one place', () => {
  const text = '<text x="5" y="20" font-size="12" text-anchor="start" fill="#000000">one</text>';
  expect(overlapsIn(textsOf(text + text.replace('one', 'two')))).toEqual(['one | two']);
});
