import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';
import { root } from '../tree.js';
import { run } from './run.js';

declare module 'vitest' {
  export interface ProvidedContext {
    /** Where the new projects stand; removed at the end. */
    readonly workshop: string;
    /** The path of the packed package. */
    readonly tarball: string;
  }
}

/** Builds and packs the package once, for every client. */
export default function setup({ provide }: TestProject): () => void {
  const workshop = mkdtempSync(join(tmpdir(), 'protolysis-clients-'));
  run('npm', ['run', '--silent', 'build', '--', '--silent'], root);
  const [{ filename }] = JSON.parse(run('npm', ['pack', '--json', '--pack-destination', workshop], root));
  provide('workshop', workshop);
  provide('tarball', join(workshop, filename));
  return () => rmSync(workshop, { recursive: true, force: true });
}
