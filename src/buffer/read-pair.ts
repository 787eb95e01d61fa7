import { ammonia } from '../catalogue/reagents/ammonium.js';
import { carbonDioxide } from '../catalogue/reagents/carbonates.js';
import type { Faults } from '../input/faults.js';
import type { Unread } from '../input/safe-read.js';
import { asBought } from '../recipe/as-bought.js';
import { readConflicts } from '../solution/conflicting-constants.js';
import type { Content } from '../solution/solution.js';
import { numberAt } from '../solver/number-at.js';
import { readProtolyte } from '../substance/read-protolyte.js';
import type { Reagent } from '../substance/reagent.js';
import type { AmountsWanted } from './amounts-wanted.js';
import { bufferLimits } from './buffer-defaults.js';
import { type MeasuredIngredient, nothing, readIngredient } from './read-ingredient.js';

type Pair = Pick<AmountsWanted, 'ingredients' | 'brings'>;

/**
 * Reads the two ingredients of a buffer, noting every fault: the one that brings the protolyte first, and what each
 * brings.
 *
 * @internal
 */
export function readPair(unread: Unread, molar: number | null, salt: Reagent, faults: Faults): Pair {
  const before = faults.count;
  const list = faults.list(unread.from, 'from', 'two ingredients', 2, 2);
  const named = unread.protolyte === undefined ? null : readProtolyte(unread.protolyte, 'protolyte', faults);
  if (list.length === 0) return { ingredients: [nothing, nothing], brings: [1, 1] };
  const first = readIngredient(list[0], 'from[0]', faults);
  const second = readIngredient(list[1], 'from[1]', faults);
  const asGiven: Pair = { ingredients: [first, second], brings: [1, 1] };
  if (faults.count > before) return asGiven;

  const given = [first, second].flatMap(({ unit }, k) =>
    unit.map(({ reagent }) => ({ reagent, path: `from[${k}]` })),
  );
  readConflicts([...given, { reagent: salt, path: 'salt' }], faults);
  for (const [k, { unit, stock, name, purity }] of [first, second].entries()) {
    if (stock) continue;
    const { reagent } = unit[0] as Content;
    if (asBought(reagent, purity) === undefined && isStrongAcid(reagent))
      faults.add('conflict', `from[${k}]`, 'a stock solution, since a strong acid is not weighed', name);
    if (purity === 1 && isGas(reagent))
      faults.add('conflict', `from[${k}]`, 'a stock solution, since the pure substance is a gas', name);
  }
  if (molar !== null) return withProtolyte(asGiven, named?.id, molar, faults);

  if (!first.stock || !second.stock)
    faults.add('missing', 'molar', 'a concentration in mol/L, unless both ingredients are stocks', undefined);
  return asGiven;
}

function withProtolyte(pair: Pair, named: string | undefined, molar: number, faults: Faults): Pair {
  const [first, second] = pair.ingredients;
  const ids = new Set([...idsOf(first), ...idsOf(second)]);
  const [only] = ids;
  const id = named ?? only;
  if (id === undefined) {
    faults.add('missing', 'from', 'an ingredient with a weak acid or base', undefined);
    return pair;
  }
  if (!ids.has(id) || (named === undefined && ids.size > 1)) {
    const code = named === undefined ? 'missing' : 'unknown-substance';
    faults.add(code, 'protolyte', `one of ${[...ids].join(', ')}`, named);
    return pair;
  }

  const brings = [broughtBy(first, id), broughtBy(second, id)] as const;
  if (brings[0] === 0 && brings[1] === 0)
    faults.add('out-of-range', 'from', `an ingredient that holds some ${id}`, 0);
  const [least, most] = bufferLimits.molar;
  for (const [k, { stock }] of pair.ingredients.entries()) {
    const brought = numberAt(brings, k);
    if (brought === 0) continue;
    if (stock && brought < least)
      faults.add('out-of-range', `from[${k}]`, `a stock of at least ${least} mol/L`, brought);
    if (!stock && molar / brought > most)
      faults.add('out-of-range', 'molar', `no more than ${most} mol/L of each ingredient`, molar);
  }
  return brings[0] === 0
    ? { ingredients: [second, first], brings: [brings[1], 0] }
    : { ingredients: [first, second], brings };
}

/** Reagents of the catalogue that cannot be weighed pure. Strong acids are recognised by their ions. */
const isGas = ({ id }: Reagent): boolean => [ammonia, carbonDioxide].some((gas) => gas.id === id);

const idsOf = ({ unit }: MeasuredIngredient): string[] =>
  unit.flatMap(({ reagent }) => reagent.protolytes.map(({ protolyte }) => protolyte.id));

/** mmol of a protolyte per unit. */
const broughtBy = ({ unit }: MeasuredIngredient, id: string): number =>
  unit
    .flatMap(({ reagent, mmol }) => reagent.protolytes.map((part) => ({ ...part, mmol })))
    .reduce((sum, { protolyte, count, mmol }) => (protolyte.id === id ? sum + count * mmol : sum), 0);

const isStrongAcid = ({ protolytes, ions }: Reagent): boolean =>
  protolytes.length === 0 && ions.length > 0 && ions.every(({ ion }) => ion.charge < 0);
