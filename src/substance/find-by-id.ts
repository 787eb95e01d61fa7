import { Faults } from '../input/faults.js';
import { lettersOf, nearestName } from '../input/nearest-name.js';
import { fieldsOf, itemsOf, lengthOf, type Unread } from '../input/safe-read.js';

/**
 * An entry of a catalogue by its id, its name or its formula, as a form or a file gives it.
 *
 * Of ids and names, capitals, blanks and hyphens do not count; of a formula the capitals do. The catalogue is yours to
 * give, so that an app carries no other. An acid is found by the formula of any of its forms.
 *
 * @param catalogue - a namespace such as `reagents`, or an object of your own
 * @param id - such as `sodiumCarbonate`, `sodium carbonate` or `Na2CO3`
 * @throws InputError where no entry fits, with the nearest one or those that hold the acid of this name, and where
 * several fit, with all of them
 * @example
 * ```ts
 * import { findById, reagents } from 'protolysis';
 *
 * findById(reagents, 'sodium carbonate').molarMass; // => 105.988
 * findById(reagents, 'Na₂CO₃').id; // => 'sodiumCarbonate'
 * findById(reagents, 'sodium carbonat'); // => throws InputError
 * ```
 */
export function findById<Entry extends object>(
  catalogue: Readonly<Record<string, Entry>>,
  id: string,
): Entry {
  const faults = new Faults('findById');
  const entries = faults.object(catalogue, 'catalogue', 'a catalogue, such as reagents');
  const wanted = faults.text(id, 'id', 'the id, name or formula of an entry');
  faults.done();
  const keys = Object.keys(entries);
  const fitting = keys.includes(wanted) ? [wanted] : keys.filter((key) => fits(key, entries[key], wanted));
  const [found] = fitting;
  if (found !== undefined && fitting.length === 1) {
    const entry = entries[found];
    faults.object(entry, `catalogue.${found}`, 'an entry of a catalogue');
    faults.done();
    return entry as Entry;
  }
  if (fitting.length > 1)
    faults.add(
      'conflict',
      'id',
      `one of ${fitting.join(', ')}`,
      id,
      `'${id}', which fits ${fitting.length} entries`,
    );
  else faults.add('unknown-substance', 'id', alternativesTo(wanted, entries), wanted);
  faults.done();
  throw new Error('unreachable');
}

function fits(key: string, entry: unknown, wanted: string): boolean {
  const { id, name, formula, species } = fieldsOf(entry) ?? {};
  if ([key, id, name].some((text) => typeof text === 'string' && isSameName(text, wanted))) return true;
  const formulas = [formula, ...listOf(species).map((one) => fieldsOf(one)?.formula)];
  return formulas.some((text) => typeof text === 'string' && plainFormula(text) === plainFormula(wanted));
}

const listOf = (value: unknown): readonly unknown[] =>
  itemsOf(value as readonly unknown[], lengthOf(value) ?? 0) ?? [];

const isSameName = (one: string, other: string): boolean =>
  lettersOf(one) !== '' && lettersOf(one) === lettersOf(other);

/** A formula with plain digits and one kind of dot: `Na₂CO₃.10H₂O` is `Na2CO3·10H2O`. */
const plainFormula = (formula: string): string =>
  formula
    .replace(/[₀-₉]/g, (digit) => String(digit.charCodeAt(0) - '₀'.charCodeAt(0)))
    .replace(/[.*•⋅]/g, '·')
    .replace(/\s/g, '');

/** What may be meant instead: reagents that hold the acid of this name, or the entry with the nearest id. */
function alternativesTo(wanted: string, entries: Unread): string {
  const holders = Object.keys(entries).filter((key) => holds(entries[key], wanted));
  if (holders.length > 0) return `one that holds it: ${holders.join(', ')}`;
  const nearest = nearestName(wanted, Object.keys(entries));
  return nearest === undefined ? 'the id, name or formula of an entry' : `${nearest}, if that is meant`;
}

function holds(entry: unknown, wanted: string): boolean {
  const { protolytes } = fieldsOf(entry) ?? {};
  return listOf(protolytes).some((part) => {
    const { id, name } = fieldsOf(fieldsOf(part)?.protolyte) ?? {};
    return [id, name].some((text) => typeof text === 'string' && isSameName(text, wanted));
  });
}
