import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { format, inspect } from 'node:util';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { filesIn, read, root } from '../tree.js';
import { codeCellsOf, isAlike, moduleOfCells } from './notebook.js';

const folder = 'coverage/notebooks';
const notebooks = filesIn('docs/notebooks/').filter((file) => file.endsWith('.ipynb'));
rmSync(root + folder, { recursive: true, force: true });
mkdirSync(root + folder, { recursive: true });

/** What a kernel would have shown: printed lines, then the value at the end of the cell. */
interface Shown {
  readonly lines: string[];
  html: string | null;
}

const display = Symbol.for('Jupyter.display');

function show(shown: Shown, value: unknown): void {
  const asked = (value as Record<symbol, unknown> | null | undefined)?.[display];
  if (value === undefined) return;
  const bundle = typeof asked === 'function' ? asked() : { 'text/plain': inspect(value) };
  shown.lines.push(bundle['text/plain']);
  shown.html = bundle['text/html'] ?? null;
}

afterEach(() => vi.restoreAllMocks());

test('there are three notebooks', () => expect(notebooks).toHaveLength(3));

// `npm run notebooks` executes them anew. Look at each before you commit it.
describe.each(notebooks)('%s', (file) => {
  const cells = codeCellsOf(JSON.parse(read(file)));

  test('shows what its code gives now, cell by cell', async () => {
    const shown: Shown[] = [];
    const now = () => shown.at(-1) as Shown;
    vi.spyOn(console, 'log').mockImplementation((...values) => void now().lines.push(format(...values)));
    vi.stubGlobal('__begin', () => shown.push({ lines: [], html: null }));
    vi.stubGlobal('__shown', (value: unknown) => show(now(), value));
    const path = `${root}${folder}/${file.split('/').at(-1)}.ts`;
    writeFileSync(path, moduleOfCells(cells));
    await import(path);
    vi.unstubAllGlobals();
    for (const [k, { text, html }] of cells.entries()) {
      const got = shown[k]?.lines.join('\n').trimEnd() ?? '';
      expect({ cell: k, text: isAlike(got, text) ? text : got }).toEqual({ cell: k, text });
      expect(shown[k]?.html ?? null).toBe(html);
    }
  });
});

describe('the comparison of outputs', () => {
  test.each([
    ['pH 8.31', 'pH 8.31', true],
    ['pH 8.31', 'pH 8.32', false],
    ['5.358274032944453', '5.358274032944451', true],
    ['5.3582740', '5.3582741', false],
    ['volume 1.0', 'volumes 1.0', false],
    ['[ 1, 2 ]', '[ 1, 2, 3 ]', false],
  ])('of %j with %j says %s', (one, other, expected) => expect(isAlike(one, other)).toBe(expected));
});
