import { cpSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { read, root } from '../tree.js';
import { newProject } from './project.js';
import { run } from './run.js';

test('the example with a pool of workers passes its own tests and prints its envelope', () => {
  const { piscina } = JSON.parse(read('docs/examples/pool/package.json')).dependencies;
  const project = newProject('pool', [`piscina@${piscina}`]);
  for (const file of ['chunk.mjs', 'sweep.mjs', 'main.mjs', 'pool.test.mjs'])
    cpSync(join(root, 'docs/examples/pool', file), join(project, file));
  expect(run('node', ['--test', 'pool.test.mjs'], project)).toMatch(/^# pass 4$/m);
  expect(run('node', ['main.mjs', '2000', '2'], project)).toContain('0 mL: pH 11.42 to 11.43');
});
