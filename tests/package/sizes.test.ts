import { expect, test } from 'vitest';
import { read } from '../tree.js';

interface Guard {
  readonly path: string;
  readonly limit: string;
}

// npm run size holds the app to its guard, so the guide is right where it gives the guard, to a kB.
test('the guide gives the size of a small app as it is guarded', () => {
  const guards: readonly Guard[] = JSON.parse(read('package.json'))['size-limit'];
  const guard = guards.find(({ path }) => path.endsWith('small-app.js'));
  const [, said] = /such an app comes to about (\d+) kB/.exec(read('docs/guides/many-curves.md')) ?? [];
  expect(Math.abs(Number(said) - Number.parseFloat(guard?.limit ?? ''))).toBeLessThanOrEqual(1);
});
