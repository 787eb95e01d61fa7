import { Faults } from '../input/faults.js';
import { fieldsOf } from '../input/safe-read.js';
import { makeTitration } from '../titration/make-titration.js';
import { readSetup } from '../titration/read-setup.js';
import type { Titration, TitrationSetup } from '../titration/titration.js';

/** At most as many characters: a setup of a hundred reagents has some 200 000. */
const mostCharacters = 1e7;

/**
 * The setup of a titration as JSON, all data of its substances included: {@link parseSetup} reads it years later,
 * whatever the catalogue has become.
 *
 * @throws InputError that lists every fault; a model of activity that is a function, which JSON would lose, is one
 * @example
 * ```ts
 * import { makeSolution, parseSetup, printSetup, reagents, titrate } from 'protolysis';
 *
 * const titration = titrate({
 *   analyte: makeSolution({ mL: 25, contents: [{ reagent: reagents.aceticAcid, molar: 0.1 }] }),
 *   titrant: makeSolution({ contents: [{ reagent: reagents.sodiumHydroxide, molar: 0.1 }] }),
 * });
 * const again = titrate(parseSetup(printSetup(titration)));
 * again.pHAt(25) === titration.pHAt(25); // => true
 * ```
 */
export function printSetup(titration: Pick<Titration, 'setup'>): string {
  const faults = new Faults('printSetup');
  const { setup } = faults.object(titration, 'titration', 'a titration as titrate returns it');
  const read = readSetup(setup, 'titration.setup', faults);
  const { activity } = read.inUse.given;
  if (activity && !activity.law)
    faults.add(
      'conflict',
      'titration.setup.conditions.activity',
      'a law of the library, which is data',
      undefined,
      'a model made of functions, which JSON does not keep',
    );
  faults.done();
  return JSON.stringify(makeTitration(read).setup);
}

/**
 * A setup from the JSON of {@link printSetup}, checked like one that was written by hand. Whatever came from elsewhere
 * may be put in: what is no setup is refused.
 *
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { parseSetup } from 'protolysis';
 *
 * parseSetup('{ "analyte": { "mL": 25 } }'); // => throws InputError
 * ```
 */
export function parseSetup(json: string): TitrationSetup {
  const faults = new Faults('parseSetup');
  const text = faults.text(json, 'json', 'the JSON of a setup, a text', mostCharacters);
  faults.done();
  const value = parsed(text);
  if (value === undefined) faults.add('wrong-type', 'json', 'JSON as printSetup writes it', json);
  faults.done();
  const read = readSetup(value, 'setup', faults);
  faults.done();
  return makeTitration(read).setup;
}

/** What a text says in JSON, if an object; undefined for anything else. */
function parsed(text: string): object | undefined {
  try {
    return fieldsOf(JSON.parse(text));
  } catch {
    return undefined; // no JSON, or nested deeper than the stack
  }
}
