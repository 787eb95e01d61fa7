import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, expect, test, vi } from 'vitest';
import { root } from '../tree.js';

const folder = mkdtempSync(join(tmpdir(), 'handout-'));

afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllEnvs();
  rmSync(folder, { recursive: true });
});

test('the example writes the page for the student and for the instructor, and says where', async () => {
  for (const name of ['TMPDIR', 'TEMP', 'TMP']) vi.stubEnv(name, folder); // what the folder is called on each system
  const lines: string[] = [];
  vi.spyOn(console, 'log').mockImplementation((line: string) => void lines.push(line));
  await import(`${root}docs/examples/handout.mjs`);

  const said = lines.map((line) => /^Handout for the (\w+): (.*)$/.exec(line) ?? []);
  expect(said.map(([, audience]) => audience)).toEqual(['student', 'instructor']);
  const [student = '', instructor = ''] = said.map(([, , path = '']) => readFileSync(path, 'utf8'));
  expect(said.every(([, , path = '']) => path.startsWith(folder))).toBe(true);
  // 2 · 0.2 g · 0.95 / 105.9875 g/mol / 0.1 mol/L = 35.853 mL
  expect(instructor).toContain('35.85');
  expect(student).not.toContain('35.85');
  for (const page of [student, instructor]) expect(page).toMatch(/^<!doctype html>.*<\/html>\s*$/s);
});
