import { expect, test } from 'vitest';
import { atomicWeightsFromMemory } from '../../src/catalogue/atomic-weights.js';
import { filesIn, read } from '../tree.js';

// What rests on memory alone, found in the data: one line each, sorted, in from-memory.txt. An entry leaves the list when someone has read its
// page, and none joins it unseen: `npm run unit -- tests/catalogue/from-memory -u` writes it anew, and the diff is to be looked at.

/** Every file of data: each constant it exports is looked through. */
const files = filesIn('src/').filter((path) =>
  /^src\/(catalogue|equilibrium|measurement|indicator)\/.*\.ts$/.test(path),
);

/** Paths of the sources from memory in a value. An entry of another file (a reagent's protolyte) counts there, not here. */
function memoriesIn(value: unknown, path: string, elsewhere: ReadonlySet<unknown>): string[] {
  if (typeof value !== 'object' || value === null) return [];
  if ('kind' in value && value.kind === 'fromMemory') return [path];
  return Object.entries(value).flatMap(([key, inside]) =>
    elsewhere.has(inside) ? [] : memoriesIn(inside, `${path}.${key}`, elsewhere),
  );
}

test('what rests on memory alone is in from-memory.txt', async () => {
  const modules = await Promise.all(
    files.map(async (path) => Object.entries((await import(`../../${path}`)) as object)),
  );
  const exported = new Map(modules.flat().map(([name, value]) => [value, name]));
  const entries = new Set(
    [...exported.keys()].filter((value) => typeof value === 'object' && !isSource(value)),
  );
  const found = modules
    .flat()
    .flatMap(([name, value]) => (isSource(value) ? [] : memoriesIn(value, name, entries)))
    .concat(atomicWeightsFromMemory.map((element) => `atomicWeights.${element}`));
  await expect(`${[...new Set(found)].sort().join('\n')}\n`).toMatchFileSnapshot('from-memory.txt');
});

const isSource = (value: unknown): boolean => typeof value === 'object' && value !== null && 'kind' in value;

// Numbers of a method stand in code, their source in a comment above: the colour of a complement (8 wavelengths), the
// colour-matching functions (18 numbers) and the just noticeable difference (1).
test('the comments that quote from memory are these', () => {
  const quoting = filesIn('src/').filter((path) => /^ ?\* .*from memory[,.:;]/m.test(read(path)));
  expect(quoting.sort()).toEqual([
    'src/catalogue/atomic-weights.ts', // listed above
    'src/catalogue/indicators/phthaleins.ts', // the concentration limit of phenolphthalein
    'src/indicator/bands-of-name.ts',
    'src/indicator/colour-channels.ts',
    'src/indicator/rank-by-sight.ts',
    'src/measurement/diagnosis/evidence.ts', // how much evidence is called strong
    'src/measurement/fit/simulate-fits.ts', // the chapter on the parametric bootstrap
    'src/measurement/line-bend.ts', // the test of linearity
  ]);
});
