import type { Faults, Unread } from '../errors.js';
import { readConflicts } from '../solution/conflicts.js';
import { type Content, solutionLimits } from '../solution/solution.js';
import { readProtolyte } from '../substance/protolyte.js';
import { type Reagent, readReagent } from '../substance/reagent.js';
import { sodiumChloride } from '../substance/reagents/salts.js';
import { bufferDefaults, bufferLimits } from './defaults.js';
import { type AmountsWanted, ionicStrengthOf } from './find-amounts.js';
import { givenConditions } from './given-conditions.js';
import { type MeasuredIngredient, readIngredient, weighed } from './read-ingredient.js';

/** A request that has been read. */
export interface ReadRequest {
  readonly wanted: AmountsWanted;
  readonly ionicStrength: number | null;
  readonly salt: MeasuredIngredient;
  readonly temperatures: readonly number[];
  readonly dilutions: readonly number[];
  readonly errorPercent: number;
}

const keys = [
  'pH',
  'mL',
  'molar',
  'from',
  'protolyte',
  'ionicStrength',
  'salt',
  'temperatures',
  'dilutions',
  'errorPercent',
  'conditions',
];

/** Reads a request from a caller's value, noting every fault. @internal */
export function readRequest(value: unknown, faults: Faults): ReadRequest {
  const unread = faults.object(value, 'request', 'a request { pH, molar, mL, from }', keys);
  const [least, most] = bufferLimits.pH;
  const [leastML, mostML] = bufferLimits.mL;
  const {
    salt: givenSalt = sodiumChloride,
    temperatures = [],
    dilutions = bufferDefaults.dilutions,
    errorPercent = bufferDefaults.errorPercent,
  } = unread;
  const pH = faults.number(unread.pH, 'pH', 'a pH', { from: least, to: most });
  const mL = faults.number(unread.mL, 'mL', 'a volume in mL', { from: leastML, to: mostML });
  const molar =
    unread.molar === undefined
      ? null
      : faults.number(unread.molar, 'molar', 'a concentration in mol/L', concentrations);
  const salt = readSalt(givenSalt, faults);
  const ionicStrength =
    unread.ionicStrength === undefined
      ? null
      : faults.number(unread.ionicStrength, 'ionicStrength', 'an ionic strength in mol/L', {
          from: leastMolar,
          to: mostMolar * ionicStrengthOf(salt),
        });
  if (ionicStrength === null && unread.salt !== undefined)
    faults.add('conflict', 'salt', 'a salt only beside ionicStrength', unread.salt);
  const conditions = givenConditions(unread.conditions, 'conditions', faults);
  return {
    wanted: {
      pH,
      mL,
      total: molar === null ? null : molar * mL,
      ...readPair(unread, molar, salt, faults),
      conditions,
    },
    ionicStrength,
    salt: weighed(salt, 1),
    temperatures: readNumbers(temperatures, 'temperatures', faults, (celsius, path) => {
      givenConditions({ celsius }, path, faults);
      return celsius as number;
    }),
    dilutions: readNumbers(dilutions, 'dilutions', faults, (times, path) => {
      const to = Math.min(bufferLimits.times, solutionLimits.mL / mL);
      return faults.number(times, path, 'how many times the volume', { from: 1, to });
    }),
    errorPercent: faults.number(errorPercent, 'errorPercent', 'an error in percent', { from: -50, to: 50 }),
  };
}

const [leastMolar, mostMolar] = bufferLimits.molar;
const concentrations = { from: leastMolar, to: mostMolar };

function readNumbers(
  value: unknown,
  path: string,
  faults: Faults,
  read: (item: unknown, path: string) => number,
): number[] {
  const list = faults.list(value, path, 'a list of numbers', 0, 100);
  return Array.from(list, (item, k) => read(item, `${path}[${k}]`));
}

function readSalt(value: unknown, faults: Faults): Reagent {
  const salt = readReagent(value, 'salt', faults);
  if (faults.any) return sodiumChloride;
  const charge = salt.ions.reduce((sum, { ion, count }) => sum + ion.charge * count, 0);
  if (
    salt.protolytes.length === 0 &&
    salt.ions.length > 0 &&
    Math.abs(charge) <= 1e-12 &&
    ionicStrengthOf(salt) > 0
  )
    return salt;
  faults.add('conflict', 'salt', 'a salt of strong ions alone, whose charges cancel', salt.name);
  return sodiumChloride;
}

/** The two ingredients, the one that brings the protolyte first, and what each brings of it. */
function readPair(
  unread: Unread,
  molar: number | null,
  salt: Reagent,
  faults: Faults,
): Pick<AmountsWanted, 'ingredients' | 'brings'> {
  const list = faults.list(unread.from, 'from', 'two ingredients', 2, 2);
  const first = readIngredient(list[0], 'from[0]', faults);
  const second = readIngredient(list[1], 'from[1]', faults);
  const wanted = unread.protolyte === undefined ? null : readProtolyte(unread.protolyte, 'protolyte', faults);
  const nothing = { ingredients: [first, second] as Ingredients, brings: [1, 1] as const };
  if (faults.any) return nothing;

  for (const [k, { unit, stock, name }] of [first, second].entries())
    if (!stock && unit.every(({ reagent }) => isStrongAcid(reagent)))
      faults.add('conflict', `from[${k}]`, 'a stock solution, since a strong acid is not weighed', name);
  const contents: Content[] = [...first.unit, ...second.unit, { reagent: salt, mmol: 0 }];
  readConflicts(
    contents.map(({ reagent }) => ({ reagent, path: 'from' })),
    faults,
  );
  if (molar === null) {
    if (!first.stock || !second.stock)
      faults.add(
        'missing',
        'molar',
        'a concentration in mol/L, since not both ingredients are stocks',
        undefined,
      );
    return nothing;
  }

  const ids = new Set(
    contents.flatMap(({ reagent }) => reagent.protolytes.map(({ protolyte }) => protolyte.id)),
  );
  if (wanted === null && ids.size !== 1) {
    const expected =
      ids.size === 0 ? 'an ingredient with a weak acid or base' : `one of ${[...ids].join(', ')}`;
    faults.add('missing', ids.size === 0 ? 'from' : 'protolyte', expected, undefined);
    return nothing;
  }
  const id = wanted?.id ?? [...ids][0];
  const brings = [first, second].map(({ unit }) => mmolOf(unit, id ?? '')) as [number, number];
  if (brings[0] === 0 && brings[1] === 0)
    faults.add('unknown-substance', 'protolyte', `one of ${[...ids].join(', ')}`, id);
  for (const [k, { stock }] of [first, second].entries()) {
    const brought = brings[k] as number;
    if (stock && brought > 0 && brought < leastMolar)
      faults.add('out-of-range', `from[${k}]`, `a stock of at least ${leastMolar} mol/L`, brought);
    if (!stock && brought > 0 && molar / brought > mostMolar)
      faults.add('out-of-range', 'molar', `no more than ${mostMolar} mol/L of each ingredient`, molar);
  }
  return brings[0] === 0
    ? { ingredients: [second, first], brings: [brings[1], 0] }
    : { ingredients: [first, second], brings };
}

const isStrongAcid = ({ protolytes, ions }: Reagent): boolean =>
  protolytes.length === 0 && ions.length > 0 && ions.every(({ ion }) => ion.charge < 0);

type Ingredients = readonly [MeasuredIngredient, MeasuredIngredient];

const mmolOf = (unit: readonly Content[], id: string): number =>
  unit
    .flatMap(({ reagent, mmol }) =>
      reagent.protolytes.filter(({ protolyte }) => protolyte.id === id).map(({ count }) => count * mmol),
    )
    .reduce((sum, part) => sum + part, 0);
