import { expect, test } from 'vitest';
import { questionsOf } from '../questions-of.mjs';
import { read } from '../tree.js';

test('the questions over the exports of an entry become its categories', () => {
  const entry =
    "/** x */\n// What is it?\nexport { type A, b as c } from './x.js';\nexport * as d from './d.js';\n";
  expect([...questionsOf(entry)]).toEqual([
    ['A', 'What is it?'],
    ['c', 'What is it?'],
    ['d', 'What is it?'],
  ]);
});

test('every export of the main entry answers a question', () => {
  const named = [...read('src/index.ts').matchAll(/export (?:type )?\{([^}]*)\}/g)]
    .flatMap(([, list = '']) => list.split(','))
    .map((name) => name.trim().split(/\s+/).at(-1) ?? '')
    .filter((name) => name !== '');
  const questions = questionsOf(read('src/index.ts'));
  expect(named.filter((name) => !questions.get(name)?.endsWith('?'))).toEqual([]);
});
