import { describe, expect, test } from 'vitest';
import { filesIn, read } from '../tree.js';

const files = filesIn('.github/workflows/');

/** The lines of a workflow, without comments. */
const linesOf = (path: string) =>
  read(path)
    .split('\n')
    .filter((line) => !/^\s*#/.test(line));

test('there is a workflow that checks and one that publishes', () => {
  expect(files.map((path) => path.split('/').at(-1)).sort()).toEqual(['check.yml', 'publish.yml']);
});

describe.each(files)('%s', (path) => {
  test('runs the command that is run at a desk', () =>
    expect(linesOf(path).filter((line) => line.trim() === '- run: bash .ci/run')).toHaveLength(1));

  test('gives no right to write but the one that provenance needs', () => {
    const rights = linesOf(path)
      .filter((line) => /:\s*write\b/.test(line))
      .map((line) => line.trim());
    expect(rights.filter((line) => !line.startsWith('id-token:'))).toEqual([]);
    expect(rights).toHaveLength(path.endsWith('publish.yml') ? 1 : 0);
    expect(linesOf(path).some((line) => /^permissions:/.test(line))).toBe(true);
  });

  test('leaves no credentials with the checked-out tree and stores no token', () => {
    const text = linesOf(path).join('\n');
    const checkouts = text.split('actions/checkout@').slice(1);
    expect(checkouts.length).toBeGreaterThan(0);
    for (const after of checkouts) expect(after.split('- ')[0]).toContain('persist-credentials: false');
    expect(text).not.toMatch(/secrets\./);
  });

  test('takes each action by its whole commit, with the tag beside it', () => {
    const uses = linesOf(path).filter((line) => /\buses:/.test(line));
    expect(uses.length).toBeGreaterThan(0);
    expect(uses.filter((line) => !/@[0-9a-f]{40} # v\d+\.\d+\.\d+$/.test(line))).toEqual([]);
  });

  test('runs only npm scripts that there are', () => {
    const { scripts } = JSON.parse(read('package.json'));
    const named = [
      ...linesOf(path)
        .join('\n')
        .matchAll(/npm run ([\w:]+)/g),
    ].map(([, name]) => name ?? '');
    expect(named.filter((name) => !(name in scripts))).toEqual([]);
  });
});
