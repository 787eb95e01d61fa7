import { beforeAll, test } from 'vitest';
import { expectAnswers } from './expected.js';
import { bring, newProject, tool } from './project.js';
import { run } from './run.js';

let project: string;
beforeAll(() => {
  project = newProject('runtimes', ['deno@2.9.6', 'bun@1.4.4']);
  for (const program of ['answers.js', 'everything.js', 'everything.cjs']) bring(project, program);
  run('node', ['node_modules/deno/install.cjs'], project);
  run('node', ['node_modules/bun/install.js'], project);
});

test.each(['everything.js', 'everything.cjs'])('%s runs on Deno', (program) =>
  expectAnswers(run(tool(project, 'deno'), ['run', '--allow-read', program], project)),
);

test.each(['everything.js', 'everything.cjs'])('%s runs on Bun', (program) =>
  expectAnswers(run(tool(project, 'bun'), ['run', program], project)),
);
