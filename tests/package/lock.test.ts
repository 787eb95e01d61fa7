import { describe, expect, test } from 'vitest';
import { read } from '../tree.js';

interface Locked {
  readonly version?: string;
  readonly resolved?: string;
  readonly integrity?: string;
}
const manifest = JSON.parse(read('package.json'));
const lock = JSON.parse(read('package-lock.json')) as { version: string; packages: Record<string, Locked> };
const installed = Object.entries(lock.packages).filter(([path]) => path !== '');

describe('package-lock.json', () => {
  test('is of the version in package.json', () => expect(lock.version).toBe(manifest.version));

  test('says of no package where it is fetched from', () =>
    expect(installed.filter(([, locked]) => locked.resolved !== undefined)).toEqual([]));

  test('holds a checksum of every package', () =>
    expect(installed.filter(([, locked]) => !locked.integrity).map(([path]) => path)).toEqual([]));
});
