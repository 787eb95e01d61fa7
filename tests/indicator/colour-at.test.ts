import fc from 'fast-check';
import { type Colour, colourAt, colourLabel, defineIndicator, type Indicator, indicators } from 'protolysis';
import { describe, expect, test } from 'vitest';
import { colourMatching, hexOf, transmitted } from '../../src/indicator/colour-channels.js';
import { colourName } from '../../src/indicator/colour-name.js';

const source = { kind: 'commonPractice', note: 'invented for a test' } as const;
const indicatorOf = (acidColour: string, baseColour: string): Indicator =>
  defineIndicator({ id: 'x', name: 'x', transition: { from: 6, to: 8 }, acidColour, baseColour, source });
const namesOf = (indicator: Indicator, ...pHs: number[]) => pHs.map((pH) => colourAt(indicator, pH).name);

describe('the CIE 1931 colour-matching functions', () => {
  // CIE 018: the standard observer at 5 nm, memory. The fit is good to 0.015 there.
  test.each([
    [440, 0.34828, 0.023, 1.74706],
    [510, 0.0093, 0.503, 0.1582],
    [555, 0.51205, 1.0, 0.00575],
    [600, 1.0622, 0.631, 0.0008],
    [650, 0.2835, 0.107, 0.0],
  ])('at %d nm are those of the table', (nm, x, y, z) => {
    const found = colourMatching(nm);
    expect(Math.abs(found.x - x)).toBeLessThan(0.015);
    expect(Math.abs(found.y - y)).toBeLessThan(0.015);
    expect(Math.abs(found.z - z)).toBeLessThan(0.015);
  });

  test('have one and the same integral, as light of equal energy is white', () => {
    const sums = { x: 0, y: 0, z: 0 };
    for (let nm = 360; nm <= 830; nm += 1)
      for (const key of ['x', 'y', 'z'] as const) sums[key] += colourMatching(nm)[key];
    // 106.857 nm (CIE 018); the fit misses it by less than 0.1 %
    for (const sum of Object.values(sums)) expect(Math.abs(sum - 106.857)).toBeLessThan(0.1);
  });
});

describe('light through bands', () => {
  test('of nothing is white', () => expect(transmitted([])).toEqual({ red: 1, green: 1, blue: 1 }));

  test.each([
    ['blue', 435, 'yellow'],
    ['green', 545, 'purple'],
    ['red', 620, 'blue-green'],
  ] as const)('a band in the %s takes that channel most', (channel, nm, name) => {
    const light = transmitted([{ nm, width: 80, absorbance: 1 }]);
    for (const other of ['red', 'green', 'blue'] as const)
      if (other !== channel) expect(light[other]).toBeGreaterThan(light[channel]);
    expect(colourName(hexOf(light))).toBe(name);
  });

  // IEC 61966-2-1 gives the matrix from linear sRGB to XYZ: with it the channels must add up to the light that is seen.
  test('is that of the matrix of sRGB', () => {
    const bands = [
      { nm: 440, width: 90, absorbance: 1.5 },
      { nm: 620, width: 60, absorbance: 0.4 },
    ];
    const absorbanceAt = (nm: number) =>
      bands.reduce((sum, band) => sum + band.absorbance * 16 ** -(((nm - band.nm) / band.width) ** 2), 0);
    const seen = { x: 0, y: 0, z: 0 };
    const all = { x: 0, y: 0, z: 0 };
    for (let nm = 380; nm <= 780; nm += 1)
      for (const key of ['x', 'y', 'z'] as const) {
        seen[key] += 10 ** -absorbanceAt(nm) * colourMatching(nm)[key];
        all[key] += colourMatching(nm)[key];
      }
    const toXYZ = (red: number, green: number, blue: number) => ({
      x: 0.4124 * red + 0.3576 * green + 0.1805 * blue,
      y: 0.2126 * red + 0.7152 * green + 0.0722 * blue,
      z: 0.0193 * red + 0.1192 * green + 0.9505 * blue,
    });
    const white = [1.2048, 0.9484, 0.9087] as const; // light of equal energy: its X, Y and Z are 1
    for (const one of Object.values(toXYZ(...white))) expect(one).toBeCloseTo(1, 3);
    const { red, green, blue } = transmitted(bands);
    const found = toXYZ(red * white[0], green * white[1], blue * white[2]);
    for (const key of ['x', 'y', 'z'] as const)
      expect(Math.abs(found[key] - seen[key] / all[key])).toBeLessThan(1e-3); // the matrix has four digits
  });

  // IEC 61966-2-1: half the light codes as 188 of 255, a tenth as 89.
  test('is coded as sRGB prescribes, and cut off at the screen', () => {
    expect(hexOf({ red: 0.5, green: 0.1, blue: 0 })).toBe('#bc5900');
    expect(hexOf({ red: 1.2, green: -0.1, blue: 1 })).toBe('#ff00ff');
  });
});

describe('the colours of the catalogue', () => {
  // Handbook colour words, before, amid and after the range (the acid and basic colours of the catalogue; the middles: common practice).
  test.each([
    ['bromothymolBlue', [4, 7, 10], ['yellow', 'green', 'blue']],
    ['bromocresolGreen', [2, 4.6, 8], ['yellow', 'green', 'blue']],
    ['thymolBlue', [6, 8.9, 12], ['yellow', 'green', 'blue']],
    ['methylOrange', [1, 3.75, 7], ['red', 'orange', 'yellow']],
    ['methylRed', [2, 5.2, 9], ['red', 'orange', 'yellow']],
    ['neutralRed', [5, 7.6, 10], ['red', 'orange', 'yellow']],
    ['methylRedBromocresolGreen', [2, 8], ['red', 'green']],
    ['phenolphthalein', [6, 8.2, 11], ['colourless', 'faint pink', 'pink']],
    ['thymolphthalein', [7, 11.5], ['colourless', 'blue']],
    ['nitramine', [9, 14], ['colourless', 'orange']],
    ['indigoCarmine', [10, 12.2, 14], ['blue', 'green', 'yellow']],
    ['congoRed', [7], ['red']],
    ['litmus', [3, 10], ['red', 'blue']],
    ['alizarinYellowR', [9, 13], ['yellow', 'orange']],
  ] as const)('%s', (id, pHs, names) => expect(namesOf(indicators[id], ...pHs)).toEqual(names));

  test('every one is light of a screen, with a name and the label of an approximation', () => {
    for (const indicator of Object.values(indicators))
      for (let pH = 0; pH <= 14; pH += 0.5) {
        const { hex, name, label } = colourAt(indicator, pH);
        expect(hex).toMatch(/^#[0-9a-f]{6}$/);
        expect(name).toMatch(/^[a-z -]+$/);
        expect(label).toBe(colourLabel);
        expect(label).toMatch(/^approximate/);
      }
  });

  test('each shows a change from end to end', () => {
    for (const indicator of Object.values(indicators)) {
      const { from, to } = indicator.transition;
      expect(colourAt(indicator, from - 2).name).not.toBe(colourAt(indicator, to + 2).name);
    }
  });
});

describe('absorbances', () => {
  const pHs = fc.double({ min: 0, max: 14, noNaN: true });
  const drops = fc.double({ min: 0.1, max: 20, noNaN: true });
  const one = fc.constantFrom(...Object.values(indicators));
  const channels = ['red', 'green', 'blue'] as const;

  test('of acid and base form add: half of each amounts to their mean', () => {
    const { bromothymolBlue } = indicators;
    const [acid, middle, base] = [-4, Number(bromothymolBlue.pKIn), 18].map((pH) =>
      colourAt(bromothymolBlue, pH),
    );
    for (const channel of channels)
      expect(middle?.absorbances[channel]).toBeCloseTo(
        (Number(acid?.absorbances[channel]) + Number(base?.absorbances[channel])) / 2,
        6,
      );
  });

  test('yellow and blue make green, where an average of the two screen colours is grey', () => {
    const dye: Indicator = {
      ...indicatorOf('yellow', 'blue'),
      bands: {
        acid: [{ nm: 435, width: 120, absorbance: 2 }],
        base: [{ nm: 605, width: 110, absorbance: 2 }],
        source,
      },
    };
    const [acid, middle, base] = [3, 7, 11].map((pH) => colourAt(dye, pH)) as [Colour, Colour, Colour];
    const average = [1, 3, 5].map((k) => {
      const [one, other] = [acid, base].map(({ hex }) => Number.parseInt(hex.slice(k, k + 2), 16)) as [
        number,
        number,
      ];
      return Math.round((one + other) / 2)
        .toString(16)
        .padStart(2, '0');
    });
    expect([acid.name, middle.name, base.name]).toEqual(['yellow', 'green', 'blue']);
    expect(colourName(`#${average.join('')}`)).toMatch(/gr[ea]y|pale|faint/);
  });

  test('grow in proportion to the drops', () =>
    fc.assert(
      fc.property(one, pHs, drops, (indicator, pH, many) => {
        const usual = colourAt(indicator, pH).absorbances;
        const found = colourAt(indicator, pH, { drops: many }).absorbances;
        for (const channel of channels) expect(found[channel]).toBeCloseTo((usual[channel] * many) / 2, 9);
      }),
    ));

  test('are never below zero', () =>
    fc.assert(
      fc.property(one, pHs, (indicator, pH) => {
        for (const value of Object.values(colourAt(indicator, pH).absorbances))
          expect(value).toBeGreaterThanOrEqual(0);
      }),
    ));

  test('of a one-colour indicator grow from nothing as the pH rises', () =>
    fc.assert(
      fc.property(pHs, fc.double({ min: 0.01, max: 2, noNaN: true }), (pH, more) => {
        const { phenolphthalein } = indicators;
        const [before, after] = [pH, pH + more].map((at) => colourAt(phenolphthalein, at).absorbances.green);
        expect(after).toBeGreaterThan(Number(before));
        expect(colourAt(phenolphthalein, 3).hex).toBe('#ffffff');
      }),
    ));

  test('of ten times the one-colour indicator are those of one unit of pH further on, while it is faint', () => {
    const faint = colourAt(indicators.phenolphthalein, 7.5).absorbances.green;
    const more = colourAt(indicators.phenolphthalein, 6.5, { drops: 20 }).absorbances.green;
    expect(more / faint).toBeCloseTo(1, 1); // α is 10^(pH − pKIn) to 1 % two units below pKIn
  });

  test('of a mixture are those of its parts', () => {
    const { methylRedBromocresolGreen } = indicators;
    const mixed = colourAt(methylRedBromocresolGreen, 5).absorbances;
    const parts = (methylRedBromocresolGreen.parts ?? []).map(({ indicator, amount }) => ({
      amount,
      absorbances: colourAt(indicator, 5).absorbances,
    }));
    expect(parts.length).toBe(2);
    for (const channel of channels) {
      const sum = parts.reduce((all, { amount, absorbances }) => all + amount * absorbances[channel], 0);
      expect(mixed[channel]).toBeCloseTo(sum, 9);
    }
  });
});

describe('an indicator without bands', () => {
  test('takes those that the names of its colours imply', () =>
    expect(namesOf(indicatorOf('red', 'blue'), 3, 11)).toEqual(['red', 'blue']));

  test('may be called by two names', () =>
    expect(colourAt(indicatorOf('yellow-orange', 'blue-violet'), 3).name).toBe('yellow'));

  test('has no colour where the name says so', () =>
    expect(colourAt(indicatorOf('colourless', 'red'), 2).name).toBe('colourless'));

  test('needs a name that is known', () =>
    expect(() => colourAt(indicatorOf('mauve', 'constructor'), 7)).toThrow(
      /acidColour is 'mauve'.*\n.*baseColour/,
    ));
});

describe('a plain name', () => {
  test.each([
    ['#ffffff', 'colourless'],
    ['#000000', 'black'],
    ['#808080', 'grey'],
    ['#ff0000', 'red'],
    ['#ff8800', 'orange'],
    ['#ffff00', 'yellow'],
    ['#00c000', 'green'],
    ['#0000ff', 'blue'],
    ['#ff40c0', 'pink'],
    ['#ffeeff', 'faint pink'],
    ['#004000', 'dark green'],
    ['#f8ffff', 'colourless'], // saturation 0.027
    ['#f7ffff', 'faint blue-green'], // 0.031
    ['#dadada', 'colourless'], // value 0.855
    ['#d8d8d8', 'grey'], // 0.847
    ['#404040', 'grey'], // 0.251
    ['#3f3f3f', 'black'], // 0.247
    ['#b39e9e', 'faint red'], // saturation 0.117, value 0.702
    ['#b29e9e', 'grey'], // value 0.698
    ['#191717', 'grey'], // saturation 0.08
    ['#191616', 'greyish red'], // 0.12
    ['#b39d9d', 'pale red'], // 0.123, value 0.702
    ['#b29c9c', 'greyish red'], // value 0.698
    ['#b37e7e', 'pale red'], // saturation 0.296
    ['#b37d7d', 'red'], // 0.302
    ['#0a0808', 'greyish red'], // 0.2
    ['#0a0707', 'dark red'], // 0.3
    ['#8d0000', 'red'], // value 0.553
    ['#8c0000', 'dark red'], // 0.549
  ])('%s is %s', (hex, name) => expect(colourName(hex)).toBe(name));

  test.each([
    ['#0f0400', 16, 'red', 'orange'],
    ['#0a0700', 42, 'orange', 'yellow'],
    ['#0d0f00', 68, 'yellow', 'yellow-green'],
    ['#010200', 90, 'yellow-green', 'green'],
    ['#000302', 160, 'green', 'blue-green'],
    ['#000d0f', 188, 'blue-green', 'blue'],
    ['#01000a', 246, 'blue', 'violet'],
    ['#07000c', 275, 'violet', 'purple'],
    ['#1d001e', 298, 'purple', 'pink'],
    ['#1e0007', 346, 'pink', 'red'],
  ])('%s, of hue %d°, is %s no more, but dark %s', (hex, hue, below, name) => {
    // full colours of a hue: of the three channels each is f(n) = 1 − max(0, min(k, 4 − k, 1)), k = (n + hue/60) mod 6
    const hexAt = (degrees: number) => {
      const digits = [5, 3, 1].map((n) => {
        const k = (n + degrees / 60) % 6;
        return Math.round(255 * (1 - Math.max(0, Math.min(k, 4 - k, 1))))
          .toString(16)
          .padStart(2, '0');
      });
      return `#${digits.join('')}`;
    };
    expect(colourName(hex)).toBe(`dark ${name}`);
    expect(colourName(hexAt(hue - 0.5))).toBe(below);
    expect(colourName(hexAt(hue + 0.5))).toBe(name);
  });
});
