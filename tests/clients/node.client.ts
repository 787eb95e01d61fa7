import { beforeAll, test } from 'vitest';
import { expectAnswers } from './expected.js';
import { bring, newProject } from './project.js';
import { run } from './run.js';

let project: string;
beforeAll(() => {
  project = newProject('node');
  for (const program of ['answers.js', 'everything.js', 'everything.cjs']) bring(project, program);
});

test.each(['everything.js', 'everything.cjs'])('%s runs on Node', (program) =>
  expectAnswers(run('node', [program], project)),
);
