import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import * as acids from '../../src/acids.js';
import * as indicators from '../../src/indicators.js';
import * as reagents from '../../src/reagents.js';
import { expectAnswers } from './expected.js';
import { bring, newProject, tool } from './project.js';
import { run } from './run.js';

/** Each bundler with what makes `out/` of `small-app.js` or `everything.js`, minified or not as it does by itself. */
const bundlers = [
  {
    name: 'esbuild',
    args: (app: string) => [app, '--bundle', '--format=esm', '--platform=node', '--outfile=out/app.mjs'],
  },
  {
    name: 'rollup',
    args: (app: string) => [
      app,
      ...['--plugin', 'node-resolve', '--plugin', 'commonjs', '--file', 'out/app.mjs'],
    ],
  },
  { name: 'webpack', args: (app: string) => ['--config', 'webpack.config.js', '--entry', `./${app}`] },
  { name: 'vite', args: (app: string) => ['build', '--ssr', app, '--logLevel', 'error'] },
];

const configs = {
  'webpack.config.js': `export default {
    mode: 'production',
    target: 'node',
    experiments: { outputModule: true },
    output: { path: import.meta.dirname + '/out', filename: 'app.mjs', library: { type: 'module' } },
  };`,
  'vite.config.js': `export default {
    build: { outDir: 'out', rollupOptions: { output: { entryFileNames: 'app.mjs' } } },
    ssr: { noExternal: true },
  };`,
};

/** What small-app.js asks for, and the acid that two of these are of. The rest of the catalogues must be gone from its bundle. */
const wanted = [
  'sodiumCarbonate',
  'sodiumHydrogenCarbonate',
  'sodiumHydroxide',
  'hydrochloricAcid',
  'carbonic',
];
const unwanted = [reagents, acids, indicators].flatMap(Object.values).flatMap(({ id }) => {
  return typeof id === 'string' && !wanted.includes(id) ? [id] : [];
});
const holds = (text: string, id: string): boolean => new RegExp(`\\bid: ?["'\`]${id}["'\`]`).test(text);

let project: string;
beforeAll(() => {
  const tools = ['esbuild@0.28.2', 'vite@8.3.8', 'webpack@5.112.2', 'webpack-cli@7.3.1'];
  const rollup = ['rollup@4.68.5', '@rollup/plugin-node-resolve@16.0.3', '@rollup/plugin-commonjs@29.0.3'];
  project = newProject('bundlers', [...tools, ...rollup]);
  for (const program of ['small-app.js', 'answers.js', 'everything.js']) bring(project, program);
  for (const [file, text] of Object.entries(configs)) writeFileSync(join(project, file), text);
});

describe.each(bundlers)('$name', ({ name, args }) => {
  const bundle = (app: string): string => {
    rmSync(join(project, 'out'), { recursive: true, force: true });
    run(tool(project, name), args(app), project);
    return readFileSync(join(project, 'out/app.mjs'), 'utf8');
  };

  test('drops what of the catalogues an app does not import', () => {
    const text = bundle('small-app.js');
    expect(wanted.filter((id) => !holds(text, id))).toEqual([]);
    expect(unwanted.length).toBeGreaterThan(50);
    expect(unwanted.filter((id) => holds(text, id))).toEqual([]);
    expect(run('node', ['out/app.mjs'], project)).toBe(run('node', ['small-app.js'], project));
  });

  test('bundles every entry with the packages that it rests on', () => {
    bundle('everything.js');
    expectAnswers(run('node', ['out/app.mjs'], project));
  });
});
