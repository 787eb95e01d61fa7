import { expect, test } from 'vitest';
import { blocksOf } from '../docs/blocks.js';
import { read } from '../tree.js';

const readme = read('README.md');

test("the README's first two lines that begin with npm run the main job and the tests", () => {
  const commands = readme.split('\n').filter((line) => line.startsWith('npm'));
  expect(commands.slice(0, 2)).toEqual(['npm ci && npm run demo', 'npm ci && npm test']);
});

test('the README says how to install, and prints a result in five lines, before anything that needs a clone', () => {
  const before = readme.slice(0, readme.indexOf('npm ci'));
  expect(before).toContain('`npm install protolysis`');
  const [first] = blocksOf('README.md', before);
  expect(first?.printed).toBeDefined();
  expect(first?.code.split('\n')).toHaveLength(5);
});

test('the README shows an example with its real output', () => {
  const shown = blocksOf('README.md', readme).filter(({ run, printed }) => run && printed !== undefined);
  expect(shown.length).toBeGreaterThan(0);
});

test('the citation in the README names the version in package.json', () => {
  const { version } = JSON.parse(read('package.json'));
  expect(readme).toContain(`version = {${version}}`);
});
