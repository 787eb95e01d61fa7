import { sodiumChloride } from '../catalogue/reagents/salts.js';
import type { Faults } from '../input/faults.js';
import { solutionLimits } from '../solution/solution.js';
import { type Reagent, readReagent } from '../substance/reagent.js';
import type { AmountsWanted } from './amounts-wanted.js';
import { bufferDefaults, bufferLimits } from './buffer-defaults.js';
import { givenConditions } from './given-conditions.js';
import { isNeutralSalt } from './ion-charge.js';
import { ionicStrengthOf } from './ionic-strength-of.js';
import { type MeasuredIngredient, weighed } from './read-ingredient.js';
import { readPair } from './read-pair.js';

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
  const before = faults.count;
  const salt = readReagent(value, 'salt', faults);
  if (faults.count > before) return sodiumChloride;
  if (isNeutralSalt(salt) && ionicStrengthOf(salt) > 0) return salt;
  faults.add('conflict', 'salt', 'a salt of strong ions alone, whose charges cancel', salt.name);
  return sodiumChloride;
}
