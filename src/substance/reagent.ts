import { frozen } from '../frozen.js';
import { at, Faults } from '../input/faults.js';
import { readSource, type Source } from '../source.js';
import { type Hazard, readHazard } from './hazard.js';
import { readMolarMass } from './molar-mass.js';
import { type PrimaryStandard, readPrimaryStandard } from './primary-standard.js';
import { type Protolyte, protolyteLimits } from './protolyte.js';
import { readProtolyte } from './read-protolyte.js';
import { wanted } from './wanted.js';

/** An ion that takes no part in any proton transfer: its charge is fixed. */
export interface Ion {
  /** A label in plain notation, such as `Na+` or `SO4(2-)`. */
  readonly formula: string;
  readonly charge: number;
}

/** A substance that one weighs or pours, and what it gives to a solution. */
export interface Reagent {
  readonly id: string;
  readonly name: string;
  /** As sold, with its hydrate water: `Na2CO3·10H2O`. */
  readonly formula?: string;
  /** g/mol; left out, it comes from the formula. */
  readonly molarMass?: number;
  /** Per formula unit. */
  readonly protolytes: readonly { readonly protolyte: Protolyte; readonly count: number }[];
  /** Per formula unit. The ions say in which form the protolytes come. */
  readonly ions: readonly { readonly ion: Ion; readonly count: number }[];
  /**
   * The usual cautions, in plain words, or with the concentrations from which they hold; the safety data sheet of the
   * bottle comes first.
   */
  readonly hazard?: string | Hazard;
  /** Of its place on the candidate list of substances of very high concern (REACH); left out where it is not on it. */
  readonly veryHighConcern?: Source;
  /** How it is weighed as a primary standard; left out where it is none. */
  readonly primaryStandard?: PrimaryStandard;
  readonly source?: Source;
}

/**
 * Defines a reagent: what one weighs or pours.
 *
 * The ions say in which form a protolyte comes: acetic acid without an ion is the acid itself, with Na⁺ its sodium
 * salt. Strong acids and bases are ions alone (HCl is Cl⁻, NaOH is Na⁺): protons and hydroxide follow from the charge
 * balance.
 *
 * @returns the same data, with `molarMass` (g/mol) filled in from the formula where it was left out
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { acids, defineReagent } from 'protolysis';
 *
 * const sodiumPropanoate = defineReagent({
 *   id: 'sodium-propanoate',
 *   name: 'sodium propanoate',
 *   formula: 'C2H5COONa',
 *   protolytes: [{ protolyte: acids.propanoic, count: 1 }],
 *   ions: [{ ion: { formula: 'Na+', charge: 1 }, count: 1 }],
 * });
 * sodiumPropanoate.molarMass; // => 96.0608
 * ```
 */
export function defineReagent(reagent: Reagent): Reagent {
  const faults = new Faults('defineReagent');
  const checked = readReagent(reagent, '', faults);
  faults.done();
  return frozen(checked);
}

const keys = [
  'id',
  'name',
  'formula',
  'molarMass',
  'protolytes',
  'ions',
  'hazard',
  'veryHighConcern',
  'primaryStandard',
  'source',
];

/** Reads a reagent from a caller's value, noting every fault, and fills in the molar mass. @internal */
export function readReagent(value: unknown, path: string, faults: Faults): Reagent {
  const unread = faults.object(value, path, wanted(value, 'a reagent', 'reagents', 'sodiumCarbonate'), keys);
  faults.text(unread.id, at(path, 'id'), 'an id');
  faults.text(unread.name, at(path, 'name'), 'a name');

  const protolytes = faults
    .list(unread.protolytes, at(path, 'protolytes'), 'a list of { protolyte, count }', 0, 100)
    .map((item, index) => {
      const here = `${at(path, 'protolytes')}[${index}]`;
      const part = faults.object(item, here, 'a part { protolyte, count }', ['protolyte', 'count']);
      const protolyte = readProtolyte(part.protolyte, `${here}.protolyte`, faults);
      return { protolyte, count: readCount(part.count, here, faults) };
    });
  const ions = faults
    .list(unread.ions, at(path, 'ions'), 'a list of { ion, count }', 0, 100)
    .map((item, index) => {
      const here = `${at(path, 'ions')}[${index}]`;
      const part = faults.object(item, here, 'a part { ion, count }', ['ion', 'count']);
      return { ion: readIon(part.ion, `${here}.ion`, faults), count: readCount(part.count, here, faults) };
    });

  const optional = <Key extends string, T>(
    key: Key,
    readOne: (item: unknown, here: string, noted: Faults) => T,
  ) => (unread[key] === undefined ? {} : { [key]: readOne(unread[key], at(path, key), faults) });
  const read = {
    ...optional('hazard', readHazard),
    ...optional('veryHighConcern', readSource),
    ...optional('primaryStandard', readPrimaryStandard),
    ...optional('source', readSource),
  };

  const reagent = { ...unread, protolytes, ions, ...read } as unknown as Reagent;
  if (unread.molarMass !== undefined) {
    faults.number(unread.molarMass, at(path, 'molarMass'), 'a molar mass in g/mol', { from: 1, to: 1e6 });
    if (unread.formula !== undefined) faults.text(unread.formula, at(path, 'formula'), 'a formula');
    return reagent;
  }
  if (unread.formula === undefined) return reagent;
  return { ...reagent, molarMass: readMolarMass(unread.formula, at(path, 'formula'), faults) };
}

function readIon(value: unknown, path: string, faults: Faults): Ion {
  const unread = faults.object(value, path, 'an ion { formula, charge }', ['formula', 'charge']);
  const { charge: limit } = protolyteLimits;
  return {
    formula: faults.text(unread.formula, `${path}.formula`, 'a formula'),
    charge: faults.number(unread.charge, `${path}.charge`, 'a charge', {
      from: -limit,
      to: limit,
      integer: true,
    }),
  };
}

/** Whole or not: an analysed composition may give a fraction. */
function readCount(count: unknown, path: string, faults: Faults): number {
  return faults.number(count, `${path}.count`, 'a count per formula unit', { above: 0, to: 1000 });
}
