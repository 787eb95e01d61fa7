import { copyFileSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { inject } from 'vitest';
import { root } from '../tree.js';
import { run } from './run.js';

/** A new project with the packed package and its pinned tools; gives its folder. No install script runs. */
export function newProject(name: string, tools: readonly string[] = []): string {
  const folder = join(inject('workshop'), name);
  mkdirSync(folder);
  writeFileSync(join(folder, 'package.json'), '{ "private": true, "type": "module" }');
  run(
    'npm',
    ['install', '--no-audit', '--no-fund', '--ignore-scripts', '--save-exact', inject('tarball'), ...tools],
    folder,
  );
  return folder;
}

/** Puts one of the programs beside this file into a project, under its own name or another. */
export function bring(folder: string, program: string, as = program): void {
  copyFileSync(join(root, 'tests/clients/programs', program), join(folder, as));
}

/** A tool of the project, by the name of its command. */
export const tool = (folder: string, command: string): string => join(folder, 'node_modules/.bin', command);
