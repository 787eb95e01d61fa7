import { describe, expect, test } from 'vitest';
import { filesIn, read } from '../tree.js';

const { files, repository } = JSON.parse(read('package.json'));
const always = ['README.md', 'LICENSE', 'package.json']; // npm packs these whatever `files` says
const all = filesIn('');
const packed = all.filter(
  (path) =>
    always.includes(path) || files.some((kept: string) => path === kept || path.startsWith(`${kept}/`)),
);
const pages = packed.filter((path) => path.endsWith('.md'));

/** The targets of the links and pictures of a page; code and inline code left out. */
const linksOf = (text: string): string[] =>
  [
    ...text
      .replace(/^```.*?^```/gms, '')
      .replace(/`[^`]*`/g, '')
      .matchAll(/\]\(([^)\s]+)\)/g),
  ].map(([, target]) => target as string);

/** The anchors that the headings of a page make. */
const anchorsOf = (text: string): string[] =>
  [...text.matchAll(/^#+ (.*)$/gm)].map(([, heading = '']) =>
    heading
      .toLowerCase()
      .replace(/[^\p{L}\p{N} -]/gu, '')
      .replaceAll(' ', '-'),
  );

describe('the pages that ship in the package', () => {
  test('are the README, the changes, the page for contributors, guides and derivations', () => {
    expect(pages).toEqual(expect.arrayContaining(['README.md', 'CHANGELOG.md', 'DEVELOPERS.md']));
    const written = all.filter((path) => /^docs\/(guides|derivations|pictures)\//.test(path));
    expect(packed).toEqual(expect.arrayContaining(written));
  });

  test.each(pages)('%s links only to what ships beside it', (page) => {
    const broken = linksOf(read(page)).filter((target) => {
      if (/^https?:/.test(target)) return false;
      const { pathname, hash } = new URL(target, `file:///${page}`);
      const path = decodeURIComponent(pathname.slice(1));
      if (!packed.includes(path)) return true;
      return hash !== '' && !anchorsOf(read(path)).includes(decodeURIComponent(hash.slice(1)));
    });
    expect(broken).toEqual([]);
  });

  test('find a link that leads nowhere, and none in code', () => {
    expect(linksOf('[a](x.md) `[b](y.md)`\n```md\n[c](z.md)\n```\n![d](d.svg)')).toEqual(['x.md', 'd.svg']);
    expect(anchorsOf('## How good it is, at 25 °C')).toEqual(['how-good-it-is-at-25-c']);
  });
});

test('the address of the repository stands in package.json alone, once it is known', () => {
  const known = repository?.url?.replace(/^git\+|\.git$/g, '');
  const texts = all.filter((path) => !path.startsWith('package')).map((path) => [path, read(path)] as const);
  const isNamed = (text: string) =>
    known === undefined ? /(?:github|gitlab|codeberg)\.\w+\/\S/.test(text) : text.includes(known);
  expect(texts.filter(([, text]) => isNamed(text)).map(([path]) => path)).toEqual([]);
});
