import { readDropSize } from '../buffer/buffer-response.js';
import type { PH } from '../equilibrium/quantities.js';
import { frozen } from '../frozen.js';
import { type Dye, readDye } from '../indicator/colour-at.js';
import { at, type Faults } from '../input/faults.js';
import { type AdditionOptions, readAdditionOptions } from '../preparation/addition-options.js';
import { readSolutions } from '../solution/read-solution.js';
import type { PouredSolution, Solution } from '../solution/solution.js';
import type { Indicator } from '../substance/indicator.js';
import { type HandoutRecipe, mostSteps, type ReadRecipe, readHandoutRecipe } from './handout-recipe.js';
import { type HandoutWords, readHandoutWords } from './words.js';

/** What is weighed for the flask: the page names it, and not what it holds. */
export interface HandoutSample {
  readonly name: string;
  readonly grams: number;
}

/** The buffer part. */
export interface HandoutBuffer {
  /** In the beaker, such as the `solution` of a recipe; as much water stands beside it. */
  readonly solution: PouredSolution;
  /** What is added to both. */
  readonly add: Solution;
  /** 10 if left out. */
  readonly drops?: number;
  /** mL; 0.05 if left out. */
  readonly dropSize?: number;
  /**
   * How the buffer is made; more of it than goes into the beaker leaves some to rinse with. The last step of a recipe
   * with a `pH` tells what to expect, and is for the instructor alone.
   */
  readonly recipe?: HandoutRecipe & { readonly pH?: PH };
}

/** What a handout is made of beside the titration. */
export interface HandoutOptions {
  /** For whom; the student if left out. */
  readonly audience?: 'student' | 'instructor';
  /** A4 if left out. */
  readonly paper?: 'A4' | 'letter';
  readonly title?: string;
  readonly purpose?: string;
  /** Left out, the sample is a solution that is poured. */
  readonly sample?: HandoutSample;
  /** For what is prepared before, such as the titrant; printed for the student too. */
  readonly recipes?: readonly HandoutRecipe[];
  readonly indicators?: readonly Indicator[];
  /** How the titration is gone through, as for `planAdditions`. */
  readonly additions?: AdditionOptions;
  readonly buffer?: HandoutBuffer;
  /** Words to put in place of those of `handoutWords`. */
  readonly words?: Partial<HandoutWords>;
}

/** What a handout takes by default. */
export const handoutDefaults = /*#__PURE__*/ frozen({
  audience: 'student',
  paper: 'A4',
  drops: 10,
} as const);

/** What fits on the page of a handout. */
export const handoutLimits = /*#__PURE__*/ frozen({
  indicators: 4,
  drops: 15,
  recipes: 3,
  steps: mostSteps,
} as const);

/** Options that have been read. @internal */
export type ReadHandout = ReturnType<typeof readHandoutOptions>;

/** Reads options from a caller's value, noting every fault. @internal */
export function readHandoutOptions(value: unknown, faults: Faults) {
  const keys = 'audience paper title purpose sample recipes indicators additions buffer words'.split(' ');
  const path = 'options';
  const unread =
    value === undefined ? {} : faults.object(value, path, `options { ${keys.join(', ')} }`, keys);
  const text = (key: string, what: string, max: number) =>
    unread[key] === undefined ? null : faults.text(unread[key], at(path, key), what, max);
  return {
    audience: readChoice(unread.audience, 'options.audience', ['student', 'instructor'] as const, faults),
    paper: readChoice(unread.paper, 'options.paper', ['A4', 'letter'] as const, faults),
    title: text('title', 'a title', 120),
    purpose: text('purpose', 'a purpose', 1000),
    sample: readSample(unread.sample, 'options.sample', faults),
    recipes: readRecipes(unread.recipes, 'options.recipes', faults),
    dyes: readDyes(unread.indicators, 'options.indicators', faults),
    how: readAdditionOptions(unread.additions ?? {}, 'options.additions', faults),
    buffer: readBuffer(unread.buffer, 'options.buffer', faults),
    words: readHandoutWords(unread.words, 'options.words', faults),
  };
}

/** One of a few texts; the first if left out. */
function readChoice<const Text extends string>(
  value: unknown,
  path: string,
  texts: readonly [Text, ...Text[]],
  faults: Faults,
): Text {
  const found = texts.find((text) => text === value);
  if (found === undefined && value !== undefined)
    faults.add('wrong-type', path, texts.map((text) => `'${text}'`).join(' or '), value);
  return found ?? texts[0];
}

function readSample(value: unknown, path: string, faults: Faults): HandoutSample | null {
  if (value === undefined) return null;
  const unread = faults.object(value, path, 'a sample { name, grams }', ['name', 'grams']);
  return {
    name: faults.text(unread.name, at(path, 'name'), 'a name'),
    grams: faults.number(unread.grams, at(path, 'grams'), 'a mass in g', { from: 1e-6, to: 1e6 }),
  };
}

const readRecipes = (value: unknown, path: string, faults: Faults): readonly ReadRecipe[] =>
  value === undefined
    ? []
    : faults
        .list(value, path, 'a list of recipes', 0, handoutLimits.recipes)
        .map((recipe, k) => readHandoutRecipe(recipe, `${path}[${k}]`, faults));

function readDyes(value: unknown, path: string, faults: Faults): readonly Dye[] {
  if (value === undefined) return [];
  const before = faults.count;
  const dyes = faults
    .list(value, path, 'a list of indicators', 0, handoutLimits.indicators)
    .map((one, k) => readDye(one, `${path}[${k}]`, faults));
  const ids = dyes.map(({ indicator }) => indicator.id);
  for (const [k, id] of faults.count > before ? [] : ids.entries())
    if (ids.indexOf(id) < k) faults.add('conflict', `${path}[${k}]`, 'each indicator once', id);
  return dyes;
}

function readBuffer(value: unknown, path: string, faults: Faults) {
  if (value === undefined) return null;
  const keys = ['solution', 'add', 'drops', 'dropSize', 'recipe'];
  const unread = faults.object(value, path, `a buffer part { ${keys.join(', ')} }`, keys);
  const [solution, add] = readSolutions(
    [
      { value: unread.solution, path: at(path, 'solution'), isPoured: true },
      { value: unread.add, path: at(path, 'add') },
    ],
    faults,
  ) as [PouredSolution, Solution];
  const limits = { from: 1, to: handoutLimits.drops, integer: true };
  return {
    solution,
    add,
    drops:
      unread.drops === undefined
        ? handoutDefaults.drops
        : faults.number(unread.drops, at(path, 'drops'), 'a number of drops', limits),
    dropSize: readDropSize(unread.dropSize, faults),
    recipe: unread.recipe === undefined ? null : readHandoutRecipe(unread.recipe, at(path, 'recipe'), faults),
  };
}
