import { describe, expect, test } from 'vitest';
import { filesIn, read } from '../tree.js';
import { typesetMath } from '../typeset-math.mjs';

type Rule = (state: { src: string; tokens: readonly object[] }) => void;

/** As much of a Markdown parser as typesetting touches. */
function newParser() {
  const rules = new Map<string, Rule>();
  const parser = {
    renderer: {
      rules: { fence: (tokens: { content: string }[], at: number) => `code: ${tokens[at]?.content}` },
    },
    core: { ruler: { after: (_before: string, name: string, rule: Rule) => rules.set(name, rule) } },
  };
  typesetMath(parser);
  const fence = (info: string, content: string): string =>
    (parser.renderer.rules.fence as (tokens: object[], at: number) => string)([{ info, content }], 0);
  return { fence, rules };
}

const pages = ['README.md', ...filesIn('docs/guides/'), ...filesIn('docs/derivations/')];
const equations = pages.flatMap((page) =>
  [...read(page).matchAll(/^```math\n(.*?)^```/gms)].map(([, tex = '']) => ({ page, tex })),
);

describe('equations of the site', () => {
  test('come out as MathML', () =>
    expect(newParser().fence('math', 'V = \\frac{A}{T}')).toMatch(
      /^<p class="equation"><math [^>]*display="block".*<mfrac>.*<\/math><\/p>$/s,
    ));

  test('are none of the code', () =>
    expect(newParser().fence('ts', 'const x = 1;')).toBe('code: const x = 1;'));

  test('fail where their TeX is wrong', () => expect(() => newParser().fence('math', '\\frac{A}')).toThrow());

  test('of the guides can all be set', () => {
    expect(equations.length).toBeGreaterThan(0);
    for (const { page, tex } of equations) expect(newParser().fence('math', tex), page).toContain('</math>');
  });

  test('in doc comments keep their lines, where every line of a paragraph is indented', () => {
    const paragraph = (map: [number, number]) => {
      const found = new Map<string, string>();
      const attrSet = (name: string, value: string) => found.set(name, value);
      return { found, token: { type: 'paragraph_open', level: 0, map, attrSet } };
    };
    const [text, equation, mixed] = [paragraph([0, 1]), paragraph([2, 4]), paragraph([5, 7])];
    const src = 'Text.\n\n  a = b (1)\n  c = d (2)\n\nText,\n  indented.';
    newParser().rules.get('indented-equations')?.({ src, tokens: [text.token, equation.token, mixed.token] });
    expect([text, equation, mixed].map(({ found }) => found.get('class'))).toEqual([
      undefined,
      'equation in-lines',
      undefined,
    ]);
  });
});
