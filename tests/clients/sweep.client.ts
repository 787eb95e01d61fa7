import { spawnSync } from 'node:child_process';
import { cpSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import { read, root } from '../tree.js';
import { newProject } from './project.js';
import { run } from './run.js';

const example = 'docs/examples/sweep';
const hasRedis = spawnSync('redis-server', ['--version']).status === 0;

let project: string;
beforeAll(() => {
  const { dependencies, devDependencies } = JSON.parse(read(`${example}/package.json`));
  const { protolysis: _, ...others } = { ...dependencies, ...devDependencies };
  project = newProject(
    'sweep',
    Object.entries(others).map(([name, version]) => `${name}@${version}`),
  );
  for (const part of ['pool', 'queue', 'arrow', 'curves.mjs', 'in-chunks.mjs', 'envelope.mjs', 'report.mjs'])
    cpSync(join(root, example, part), join(project, part), { recursive: true });
});

const passing = (file: string) => Number(/^# pass (\d+)$/m.exec(run('node', ['--test', file], project))?.[1]);

test('the example with a pool of workers passes its own tests and prints its envelope', () => {
  expect(passing('pool/pool.test.mjs')).toBe(4);
  expect(run('node', ['pool/main.mjs', '2000', '2'], project)).toContain('0 mL: pH 11.42 to 11.43');
});

test.skipIf(!hasRedis)('the example with a queue passes its own tests (skipped without redis-server)', () =>
  expect(passing('queue/queue.test.mjs')).toBe(4),
);

test('the example with columns of Apache Arrow passes its own tests', () =>
  expect(passing('arrow/arrow.test.mjs')).toBe(4));
