import { type MeasuredIngredient, readIngredient } from '../buffer/read-ingredient.js';
import { flasks as isoFlasks, pipettes as isoPipettes, type Vessel } from '../catalogue/glassware.js';
import type { Faults } from '../input/faults.js';
import type { Reagent } from '../substance/reagent.js';
import { preparationDefaults } from './preparation.js';
import { readGlass, readVessel } from './read-glassware.js';

/** A request for a solution that has been read. */
export type ReadPreparation = ReturnType<typeof readPreparation>;

const keys = [
  'from',
  'molar',
  'mL',
  'groups',
  'glass',
  'flasks',
  'pipettes',
  'vesselPercent',
  'weighing',
] as const;

/** Reads a request for a solution from a caller's value, noting every fault. @internal */
export function readPreparation(value: unknown, faults: Faults) {
  const unread = faults.object(value, 'request', 'a request { from, molar, mL }', keys);
  const optional = (key: 'groups' | 'vesselPercent' | 'weighing', what: string, limits: object): number =>
    unread[key] === undefined ? preparationDefaults[key] : faults.number(unread[key], key, what, limits);
  const { ingredient, reagent } = readFrom(unread.from, faults);
  const glass = readGlass(unread.glass, preparationDefaults.glass, faults);
  const each = faults.number(unread.mL, 'mL', 'a volume in mL', { from: 1, to: most });
  const groups = optional('groups', 'a number of groups', { from: 1, to: 10_000, integer: true });
  if (!faults.any && each * groups > most)
    faults.add('out-of-range', 'groups', `groups that need no more than ${most} mL in all`, groups);
  return {
    ingredient,
    reagent,
    molar: faults.number(unread.molar, 'molar', 'a concentration in mol/L', { from: 1e-6, to: 20 }),
    mL: each * groups,
    glass,
    flasks: readVessels(unread.flasks, 'flasks', isoFlasks, faults),
    pipettes: readVessels(unread.pipettes, 'pipettes', isoPipettes, faults),
    vesselPercent: optional('vesselPercent', 'a limit of error in percent', { from: 0.01, to: 100 }),
    weighing: optional('weighing', 'an uncertainty in mg', { from: 0, to: 1e5 }),
  };
}

/** mL. */
const most = 1e5;

/** What it is made from: one reagent, that has a molar mass if it is weighed. */
function readFrom(value: unknown, faults: Faults): { ingredient: MeasuredIngredient; reagent: Reagent } {
  const before = faults.count;
  const ingredient = readIngredient(value, 'from', faults);
  const held = ingredient.unit.filter(({ mmol }) => mmol > 0);
  const [content] = held;
  const isRead = faults.count === before;
  if (isRead && (content === undefined || held.length > 1))
    faults.add('conflict', 'from', 'a stock that holds one reagent', value, ingredient.name);
  const reagent = content?.reagent as Reagent;
  if (isRead && content && !ingredient.stock && reagent.molarMass === undefined)
    faults.add(
      'missing',
      'from.molarMass',
      'a reagent with a molar mass or a formula, or a stock',
      undefined,
    );
  return { ingredient, reagent };
}

/** The vessels at hand, each size once, the smallest first. */
function readVessels(
  value: unknown,
  path: string,
  known: readonly Vessel[],
  faults: Faults,
): readonly Vessel[] {
  const bySize = (first: Vessel, second: Vessel) => first.mL - second.mL;
  if (value === undefined) return [...known].sort(bySize);
  const found = faults
    .list(value, path, 'a list of volumes in mL', 1, 100)
    .flatMap((size, k) => readVessel(size, `${path}[${k}]`, known, faults) ?? []);
  return [...new Set(found)].sort(bySize);
}
