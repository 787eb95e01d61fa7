import { at, type Faults } from '../input/faults.js';
import type { Unread } from '../input/safe-read.js';
import { partOf } from '../solution/aliquot.js';
import { readSolutionRecipe, type SolutionRecipe } from '../solution/make-solution.js';
import { mixtureOf } from '../solution/mix.js';
import { readSolution, readSolutions } from '../solution/read-solution.js';
import type { Solution } from '../solution/solution.js';
import type { Indicator } from '../substance/indicator.js';
import type { Protolyte } from '../substance/protolyte.js';
import { readIndicator } from '../substance/read-indicator.js';
import { readProtolyte } from '../substance/read-protolyte.js';
import { type Reagent, readReagent } from '../substance/reagent.js';

/** What stands in a bottle, as it was bought. */
export type Bottle = Reagent | Protolyte | Indicator;

/** What is titrated with what: `TitrationSetup`, of which only the solutions count. */
export interface Poured {
  readonly analyte: Solution;
  readonly titrant: Solution;
}

/**
 * What cautions are asked of: a reagent, a protolyte, an indicator, a solution, a recipe for one, a titration or its
 * setup, a recipe for a buffer, an equilibrium, or anything that says which reagents it holds.
 */
export type Handled =
  | Bottle
  | Solution
  | SolutionRecipe
  | { readonly contents: readonly { readonly reagent: Reagent }[] }
  | Poured
  | { readonly setup: Poured }
  | { readonly solution: Solution }
  | {
      readonly parts: readonly ({ readonly reagent: Reagent } | { readonly stock: Solution })[];
      readonly solution: Solution;
    };

/** What has been handed over, sorted by what cautions need. @internal */
export interface HandledParts {
  /** Handled as bought. */
  readonly bottles: readonly Bottle[];
  /** Handled as a solution: its reagents count at their concentration. */
  readonly liquids: readonly Solution[];
  /** In one vessel at some time: gases may leave it. */
  readonly mixtures: readonly Solution[];
}

/** Reads one thing that is handled, noting every fault. @internal */
export function readHandled(value: unknown, path: string, faults: Faults): HandledParts {
  const unread = faults.object(value, path, 'a reagent, a protolyte, an indicator or a solution');
  const here = (key: string) => at(path, key);
  // before anything else: a mixed indicator has parts, as a recipe has
  if (unread.transition !== undefined) return { ...nothing, bottles: [readIndicator(unread, path, faults)] };
  if (unread.contents !== undefined) return readContents(unread, path, faults);
  if (unread.setup !== undefined) {
    const setup = faults.object(unread.setup, here('setup'), 'a setup { analyte, titrant }');
    return readPoured(setup, here('setup'), faults);
  }
  if (unread.analyte !== undefined || unread.titrant !== undefined) return readPoured(unread, path, faults);
  if (unread.parts !== undefined) return readRecipe(unread, path, faults);
  if (unread.solution !== undefined) {
    const solution = faults.object(unread.solution, here('solution'), 'a solution');
    return readContents(solution, here('solution'), faults);
  }
  const readOne = unread.steps === undefined ? readReagent : readProtolyte;
  return { ...nothing, bottles: [readOne(unread, path, faults)] };
}

const nothing: HandledParts = { bottles: [], liquids: [], mixtures: [] };

/** A solution, a recipe for one (its reagents come from bottles), or reagents without amounts. */
function readContents(unread: Unread, path: string, faults: Faults): HandledParts {
  const here = at(path, 'contents');
  const parts = faults
    .list(unread.contents, here, 'a list of { reagent }')
    .map((item, index) => faults.object(item, `${here}[${index}]`, 'a part { reagent }'));
  const { mL } = unread;
  const given = (key: string) => parts.some((part) => part[key] !== undefined);
  if (given('molar') || given('grams') || (mL === undefined && given('mmol'))) {
    const solution = readSolutionRecipe({ ...(mL !== undefined && { mL }), contents: parts }, path, faults);
    return { bottles: solution.contents.map(({ reagent }) => reagent), liquids: [], mixtures: [solution] };
  }
  if (given('mmol')) {
    const solution = readSolution({ mL, contents: parts }, path, faults);
    return { bottles: [], liquids: [solution], mixtures: [solution] };
  }
  const readPart = ({ reagent }: Unread, index: number) =>
    readReagent(reagent, `${here}[${index}].reagent`, faults);
  return { ...nothing, bottles: parts.map(readPart) };
}

/** The shares of titrant at which its mixture with the analyte is looked at: every one that can occur, near enough. */
const shares = /*#__PURE__*/ Array.from({ length: 19 }, (_, k) => (k + 1) / 20);

function readPoured(unread: Unread, path: string, faults: Faults): HandledParts {
  const before = faults.count;
  const liquids = readSolutions(
    (['analyte', 'titrant'] as const).map((key) => ({ value: unread[key], path: at(path, key) })),
    faults,
  );
  if (faults.count > before) return nothing;
  const [analyte, titrant] = liquids as [Solution, Solution];
  const mixed = shares.map((share) =>
    mixtureOf([partOf(analyte, 1000 * (1 - share)), partOf(titrant, 1000 * share)]),
  );
  return { bottles: [], liquids, mixtures: [...liquids, ...mixed] };
}

/**
 * Reads a recipe. What is weighed comes from a bottle, what is poured from a stock; of the finished solution only gases
 * count.
 *
 * @internal
 */
export function readRecipe(unread: Unread, path: string, faults: Faults): HandledParts {
  const here = at(path, 'parts');
  const parts = faults.list(unread.parts, here, 'a list of { reagent } or { stock }').map((item, index) => {
    const part = faults.object(item, `${here}[${index}]`, 'a part { reagent } or { stock }');
    if (part.stock !== undefined) {
      const stock = readSolution(part.stock, `${here}[${index}].stock`, faults);
      return { ...nothing, liquids: [stock], mixtures: [stock] };
    }
    return { ...nothing, bottles: [readReagent(part.reagent, `${here}[${index}].reagent`, faults)] };
  });
  const finished = readSolution(unread.solution, at(path, 'solution'), faults);
  return joined([...parts, { ...nothing, mixtures: [finished] }]);
}

/** Everything that several things bring to the bench, as one. @internal */
export const joined = (all: readonly HandledParts[]): HandledParts => ({
  bottles: all.flatMap(({ bottles }) => bottles),
  liquids: all.flatMap(({ liquids }) => liquids),
  mixtures: all.flatMap(({ mixtures }) => mixtures),
});
