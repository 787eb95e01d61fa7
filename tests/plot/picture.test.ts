import { acids, defineProtolyte, makeSolution, reagents, titrate } from 'protolysis';
import { drawSpecies, drawTitration, plotWords } from 'protolysis/plot';
import { describe, expect, test } from 'vitest';
import { asMarkup } from '../../src/output/as-markup.js';
import { textsOf, unescaped } from './texts-of.js';

const picture = drawSpecies(acids.carbonic);

/** Whether a text is XML as far as pictures use it: tags in pairs, attributes in quotes, no bare `&` or `<`. */
function isWellFormed(svg: string): boolean {
  const open: string[] = [];
  const rest = svg.replace(/<(\/?)([a-z]+)((?: [\w:-]+="[^"<&]*")*)(\/?)>/g, (_, closes, name, __, alone) => {
    if (closes) return open.pop() === name ? '' : '<';
    if (!alone) open.push(name);
    return '';
  });
  return open.length === 0 && !/[<>]|&(?!amp;|lt;|gt;|quot;|#39;)/.test(rest);
}

describe('a picture for those who do not see it', () => {
  test('is an image with a title and a description, before anything that is drawn', () =>
    expect(picture.svg).toMatch(
      /^<svg [^>]*role="img"[^>]*>\n<title>Species of carbonic acid against pH<\/title>\n<desc>[^<]{50,}<\/desc>\n<rect/,
    ));

  test('says in words what it shows', () =>
    expect(picture.description).toBe(
      'CO₂(aq): largest fraction 1.00 at pH 0.00. HCO₃⁻: largest fraction 0.98 at pH 8.34. CO₃²⁻: largest fraction 1.00 at pH 14.00.',
    ));
});

describe('the text of a picture', () => {
  test('is well-formed, whatever the names in it', () => {
    const name = `</text><script>alert("1")</script> & 'x'`;
    const protolyte = defineProtolyte({ ...acids.acetic, id: 'odd', name });
    const { svg } = drawSpecies(protolyte);
    expect(isWellFormed(svg)).toBe(true);
    expect(svg).not.toContain('<script');
    expect(unescaped(svg)).toContain(`alert("1")</script> & 'x'`);
  });

  test('holds no character that XML does not allow', () => {
    const forbidden = String.fromCharCode(0, 8, 0xd800, 0xffff);
    expect(asMarkup(`a${forbidden}\tb`)).toBe('a\uFFFD\uFFFD\uFFFD\uFFFD\tb');
  });

  test('would not be taken for well-formed otherwise', () =>
    expect(['<a>', '<a></b>', '<a x=1></a>', '<a>&</a>', '<a><</a>'].map(isWellFormed)).toEqual(
      Array(5).fill(false),
    ));

  test('has no id, style sheet, script or address, so that it stands in any page', () =>
    expect(picture.svg.replace('xmlns="http://www.w3.org/2000/svg"', '')).not.toMatch(
      / id=|<style|<script|href|url\(|http/,
    ));

  test('is what the picture is as a text', () => expect(`${picture}`).toBe(picture.svg));
});

describe('a picture as data', () => {
  test('survives JSON, and can be changed by nobody', () => {
    expect(JSON.parse(JSON.stringify(picture))).toEqual({ ...picture });
    expect(Object.keys(picture)).toEqual(['title', 'description', 'width', 'height', 'svg']);
    expect(Object.isFrozen(picture)).toBe(true);
  });

  test('shows itself in a notebook as an image that needs no trust', () => {
    const hook = (picture as unknown as Record<symbol, () => Record<string, string>>)[
      Symbol.for('Jupyter.display')
    ] as () => Record<string, string>;
    const { 'text/html': html = '', 'text/plain': plain, ...others } = hook();
    expect(others).toEqual({});
    expect(plain).toBe('Species of carbonic acid against pH (picture, 640 by 434 px)');
    const [, coded = ''] = /^<img alt="[^"]+" src="data:image\/svg\+xml;base64,([^"]+)">$/.exec(html) ?? [];
    expect(Buffer.from(coded, 'base64').toString('utf8')).toBe(picture.svg);
  });

  test.each(['', 'a', 'ab', 'abc', 'pH → 7 · ₃⁻ 𝛼'])(
    'is coded byte for byte where its title ends in %j',
    (end) => {
      const { title } = { title: `title${end}` };
      const one = drawSpecies(acids.acetic, { title });
      const hook = (one as unknown as Record<symbol, () => Record<string, string>>)[
        Symbol.for('Jupyter.display')
      ] as () => Record<string, string>;
      const coded = /base64,([^"]+)"/.exec(hook()['text/html'] ?? '')?.[1] ?? '';
      expect(coded).toBe(Buffer.from(one.svg).toString('base64'));
    },
  );
});

describe('the words of a picture', () => {
  const titration = titrate({
    analyte: makeSolution({ mL: 25, contents: [{ reagent: reagents.aceticAcid, molar: 0.1 }] }),
    titrant: makeSolution({ contents: [{ reagent: reagents.sodiumHydroxide, molar: 0.1 }] }),
  });

  test('can all be replaced', () => {
    const words = Object.fromEntries(Object.keys(plotWords).map((key) => [key, `<${key}>`]));
    const { svg, description } = drawTitration(titration, { words, slope: true });
    const own = textsOf(svg)
      .map(({ text }) => text)
      .filter((text) => /[a-z]{2}/i.test(text));
    expect(own.filter((text) => !/^<\w+>$/.test(text))).toEqual([]);
    expect(description).toBe('<describeCurve> <describeEquivalence> <describeHalfEquivalence>');
  });

  test('take the values in braces wherever they stand', () => {
    const words = { point: '{pH} bei {mL} ml', equivalence: 'Äquivalenz' };
    const texts = textsOf(drawTitration(titration, { words }).svg).map(({ text }) => text);
    expect(texts).toContain('8.73 bei 25.00 ml');
    expect(texts).toContain('Äquivalenz');
  });
});
