import { describe, expect, test } from 'vitest';
import { read } from '../tree.js';
import { bring, newProject, tool } from './project.js';
import { run } from './run.js';

/** The lowest that README.md promises, the last of each older line, and the newest. Below 5.4 there is no `NoInfer`. */
const compilers = ['5.4.5', '5.9.3', '6.0.3', '7.0.2'];

/** Files by what they compile to: a bundler takes modules alone. */
const resolutions = [
  { name: 'node16', module: 'node16', files: ['typed.mts', 'typed.cts'] },
  { name: 'nodenext', module: 'nodenext', files: ['typed.mts', 'typed.cts'] },
  { name: 'bundler', module: 'esnext', files: ['typed.mts'] },
];

describe.each(compilers)('TypeScript %s', (version) => {
  const project = newProject(`typescript-${version}`, [`typescript@${version}`]);
  for (const file of ['typed.mts', 'typed.cts']) bring(project, 'typed.ts', file);

  test.each(resolutions)('reads the types by $name', ({ name, module, files }) => {
    const options = ['--noEmit', '--strict', '--target', 'es2022', '--lib', 'es2022,dom'];
    const resolution = ['--module', module, '--moduleResolution', name];
    expect(run(tool(project, 'tsc'), [...options, ...resolution, ...files], project)).toBe('');
  });
});

test('README.md names the lowest compiler tried', () => {
  const [major, minor] = compilers[0]?.split('.') ?? [];
  expect(read('README.md')).toContain(`TypeScript ${major}.${minor}`);
});
