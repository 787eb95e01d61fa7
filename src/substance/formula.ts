import { atomicWeights, type Element } from '../catalogue/atomic-weights.js';
import type { Faults } from '../input/faults.js';

/** How many atoms of each element one formula unit holds. @internal */
export type Composition = ReadonlyMap<Element, number>;

/**
 * Reads a formula in plain notation from a caller's value, noting what is wrong and where:
 *
 * - counts stand after an element or a bracket: `Na2CO3`, `Ca(OH)2`, `K4[Fe(CN)6]`;
 * - a dot joins parts, and a number after it multiplies its part: `Na2CO3·10H2O`, `K2CO3·1.5H2O`; `*` and `.` will do;
 * - one charge stands bare at the end, several stand in brackets, so that none looks like a count: `HCO3-`, `CO3(2-)`;
 * - a state may come last: `CO2(aq)`. Charge and state leave the composition as it is.
 *
 * @internal
 */
export function readComposition(value: unknown, path: string, faults: Faults): Composition {
  const formula = faults.text(value, path, 'a formula such as Na2CO3·10H2O');
  if (formula !== value) return new Map();
  try {
    return new Reader(formula.replace(chargeAndState, '')).parts();
  } catch (error) {
    if (!(error instanceof Unreadable)) throw error;
    faults.add('bad-formula', path, error.message, formula);
    return new Map();
  }
}

const chargeAndState = /(?:\([1-9]\d*[+-]\)|[+-])?(?:\((?:aq|s|l|g)\))?$/;
const closing: Readonly<Record<string, string>> = { '(': ')', '[': ']', '{': '}' };

/** Far above the counts of any real substance, and far below overflow. */
const limits = { count: 1000, atoms: 100_000 } as const;

/** What should stand in the formula instead; places are counted in characters from 1. */
class Unreadable extends Error {}

/**
 * Recursive descent: parts = factor? units (dot factor? units)*, units = ((element | bracket units bracket) count?)+
 */
class Reader {
  readonly #formula: string;
  #position = 0;

  constructor(formula: string) {
    this.#formula = formula;
  }

  parts(): Composition {
    const total = new Map<Element, number>();
    do {
      const factor = this.#count(/\d+(?:\.\d+)?/y);
      addTo(total, this.#units(), factor);
    } while (this.#take(/[·*.]/y) !== '');

    const left = this.#formula.charAt(this.#position);
    if (left !== '')
      throw new Unreadable(`a formula such as Na2CO3·10H2O, without the '${left}'${this.#place()}`);
    const atoms = [...total.values()].reduce((sum, count) => sum + count, 0);
    if (!(atoms <= limits.atoms)) throw new Unreadable(`a formula of at most ${limits.atoms} atoms`);
    return total;
  }

  #units(): Composition {
    const atoms = new Map<Element, number>();
    for (;;) {
      const place = this.#place();
      const bracket = this.#take(/[([{]/y);
      const element = bracket === '' ? this.#take(/[A-Z][a-z]?/y) : '';
      if (bracket !== '') {
        const inside = this.#units();
        if (this.#take(/[)\]}]/y) !== closing[bracket])
          throw new Unreadable(`a formula with a '${closing[bracket]}' for the '${bracket}'${place}`);
        addTo(atoms, inside, this.#count(/\d+/y));
      } else if (isElement(element)) addTo(atoms, new Map([[element, 1]]), this.#count(/\d+/y));
      else if (element !== '')
        throw new Unreadable(`an element of known atomic weight instead of '${element}'${place}`);
      else break;
    }
    if (atoms.size === 0) throw new Unreadable(`a formula with an element symbol${this.#place()}`);
    return atoms;
  }

  #count(pattern: RegExp): number {
    const place = this.#place();
    const digits = this.#take(pattern);
    if (/^0\d/.test(digits))
      throw new Unreadable(`a count that does not begin with 0 (oxygen is the letter O)${place}`);
    const count = digits === '' ? 1 : Number(digits);
    if (!(count > 0 && count <= limits.count))
      throw new Unreadable(`a count above 0 and at most ${limits.count}${place}`);
    return count;
  }

  /** Takes the text that matches at this place; '' where none does. */
  #take(pattern: RegExp): string {
    pattern.lastIndex = this.#position;
    const taken = pattern.exec(this.#formula)?.[0] ?? '';
    this.#position += taken.length;
    return taken;
  }

  #place(): string {
    return ` at character ${this.#position + 1}`;
  }
}

function addTo(atoms: Map<Element, number>, more: Composition, times: number): void {
  for (const [element, count] of more) atoms.set(element, (atoms.get(element) ?? 0) + count * times);
}

const isElement = (symbol: string): symbol is Element => Object.hasOwn(atomicWeights, symbol);
