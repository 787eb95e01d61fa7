import { Faults } from '../input/faults.js';
import { lettersOf, nearestName } from '../input/nearest-name.js';

/**
 * An entry of a catalogue by its id, as a form or a file gives it.
 *
 * Capitals, blanks and hyphens do not count. The catalogue is yours to give, so that an app carries no other.
 *
 * @param catalogue - a namespace such as `reagents`, or an object of your own
 * @param id - the id of an entry, such as `sodiumCarbonate` or `sodium carbonate`
 * @throws InputError where no entry has the id, with the nearest one
 * @example
 * ```ts
 * import { findById, reagents } from 'protolysis';
 *
 * findById(reagents, 'sodium carbonate').molarMass; // => 105.988
 * findById(reagents, 'sodium carbonat'); // => throws InputError
 * ```
 */
export function findById<Entry extends object>(
  catalogue: Readonly<Record<string, Entry>>,
  id: string,
): Entry {
  const faults = new Faults('findById');
  const entries = faults.object(catalogue, 'catalogue', 'a catalogue, such as reagents');
  const wanted = faults.text(id, 'id', 'the id of an entry');
  faults.done();
  const ids = Object.keys(entries);
  const nearest = ids.includes(wanted) ? wanted : nearestName(wanted, ids);
  if (nearest !== undefined && lettersOf(nearest) === lettersOf(wanted)) {
    const entry = entries[nearest];
    faults.object(entry, `catalogue.${nearest}`, 'an entry of a catalogue');
    faults.done();
    return entry as Entry;
  }
  const given = nearest === undefined ? 'the id of an entry' : `${nearest}, if that is meant`;
  faults.add('unknown-substance', 'id', given, wanted);
  faults.done();
  throw new Error('unreachable');
}
