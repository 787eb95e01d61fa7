import { describe, expect, test } from 'vitest';
import { pictures } from '../../docs/examples/pictures.mjs';
import { filesIn, read } from '../tree.js';

// `npm run pictures` draws them anew. Look at each before you commit it: on paper, on a phone, and in grey.
describe('the pictures of the documentation', () => {
  test.each(Object.entries(pictures))('%s is what the code draws now', (name, { svg }) =>
    expect(read(`docs/pictures/${name}.svg`)).toBe(`${svg}\n`),
  );

  test('are all there is in their folder, and each is shown somewhere', () => {
    const names = filesIn('docs/pictures/').map((path) => path.split('/').at(-1) as string);
    expect(names.sort()).toEqual(
      Object.keys(pictures)
        .map((name) => `${name}.svg`)
        .sort(),
    );
    const shown = ['README.md', ...filesIn('docs/guides/')].map(read).join('\n');
    expect(names.filter((name) => !shown.includes(`pictures/${name})`))).toEqual([]);
  });
});
