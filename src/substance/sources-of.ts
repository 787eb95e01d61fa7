import { works } from '../bibliography.js';
import { atomicWeightsSource } from '../catalogue/atomic-weights.js';
import { frozen } from '../frozen.js';
import { at, Faults } from '../input/faults.js';
import { readSource, type Source } from '../source.js';
import { readMolarMass } from './molar-mass.js';

/** A source, and what was taken from it. */
export interface SourceUse {
  readonly source: Source;
  /** The values that rest on it, such as `carbonic acid: step 1`. */
  readonly for: readonly string[];
  /** The source in words, with the work spelled out. */
  readonly citation: string;
}

/**
 * The sources of everything that a value holds: of a protolyte, a reagent, a solution, the setup of a titration, …
 *
 * Walks plain data and lists every source that stands there, each once, with what it is for. Alternatives beside the
 * values in use are left out, and so are the solids of a protolyte.
 *
 * @param holder - an object or a list; cycles in it do no harm
 * @throws InputError if it is neither, or if a source in it has a wrong or missing part
 * @example
 * ```ts
 * import { acids, sourcesOf } from 'protolysis';
 *
 * const [first] = sourcesOf(acids.phenol);
 * first?.for; // => ['phenol: step 1']
 * first?.citation; // => 'L. P. Fernandez, L. G. Hepler, J. Am. Chem. Soc. 81, 1783 (1959), value at 25 °C; checked: IUPAC Digitized pKa Dataset (reliable, 9.994)'
 * ```
 */
export function sourcesOf(holder: object): readonly SourceUse[] {
  const faults = new Faults('sourcesOf');
  if (typeof holder !== 'object' || holder === null)
    faults.add('wrong-type', '', 'an object or a list that holds data with sources', holder);
  faults.done();

  const uses = new Map<string, { source: Source; for: Set<string> }>();
  const note = (source: Source, ...use: string[]): void => {
    const citation = citationOf(source);
    const known = uses.get(citation) ?? { source, for: new Set() };
    uses.set(citation, known);
    known.for.add(use.filter((part) => part !== '').join(': '));
  };

  const seen = new Set<object>();
  const left: Place[] = [{ value: holder, path: '', owner: '', part: '' }];
  for (let place = left.pop(); place !== undefined; place = left.pop()) {
    const { value, path } = place;
    if (seen.has(value)) continue;
    seen.add(value);
    const keys = keysIn(value);
    if (keys === undefined) {
      faults.add('wrong-type', path, 'plain data', value);
      continue;
    }
    const name = own(value, 'name');
    const { owner, part } = typeof name === 'string' ? { owner: name, part: '' } : place;
    if (hasMolarMassOfFormula(value)) note(atomicWeightsSource, owner, 'molar mass');

    const inside: Place[] = [];
    for (const key of keys) {
      const item = own(value, key);
      if (typeof item !== 'object' || item === null || leftOut.includes(key)) continue;
      const here = Array.isArray(value) ? `${path}[${key}]` : at(path, key);
      if (kinds.includes(own(item, 'kind'))) {
        readSource(item, here, faults);
        if (!faults.any) note(item as Source, owner, key === 'thermalSource' ? `${part}, dH and dCp` : part);
      } else inside.push({ value: item, path: here, owner, part: partNamed(value, part, key) });
    }
    for (const next of inside.reverse()) left.push(next);
  }
  faults.done();
  return frozen([...uses].map(([citation, use]) => ({ source: use.source, for: [...use.for], citation })));
}

/** What the part under a key is called: `step 1` of a list of steps, or the key itself. */
function partNamed(holder: object, part: string, key: string): string {
  if (Array.isArray(holder)) return numbered(part, key);
  return key === 'log10K' ? `${part}, log10 K(T)` : key;
}

/** Keys that no number rests on: other values, and solids that are only warned of. */
const leftOut = ['alternatives', 'solids'];

/** An object to look through: its path, the nearest named object around it, and its part of that. */
interface Place {
  readonly value: object;
  readonly path: string;
  readonly owner: string;
  readonly part: string;
}

/** The first of `steps` is `step 1`. */
const numbered = (list: string, index: string): string =>
  `${list.replace(/s$/, '')} ${Number(index) + 1}`.trim();

/** A plain property. Getters are not called: they may compute, or throw. */
function own(value: object, key: string): unknown {
  try {
    return Object.getOwnPropertyDescriptor(value, key)?.value;
  } catch {
    return undefined; // a proxy
  }
}

/** Undefined for a proxy that throws. */
function keysIn(value: object): readonly string[] | undefined {
  try {
    return Object.keys(value);
  } catch {
    return undefined;
  }
}

/** False where the caller gave the molar mass. */
function hasMolarMassOfFormula(value: object): boolean {
  const molarMass = own(value, 'molarMass');
  return (
    molarMass !== undefined && molarMass === readMolarMass(own(value, 'formula'), '', new Faults('sourcesOf'))
  );
}

const kinds: readonly unknown[] = ['published', 'commonPractice', 'fromMemory'] satisfies Source['kind'][];

function citationOf(source: Source): string {
  if (source.kind === 'commonPractice') return `common practice: ${source.note}`;
  const { work = '' } = source;
  const title = Object.hasOwn(works, work) ? works[work as keyof typeof works] : work;
  if (source.kind === 'published') {
    const checked = source.checked === undefined ? '' : `; checked: ${source.checked}`;
    return `${title}, ${source.where}${checked}`;
  }
  return `from memory${title === '' ? '' : ` of ${title}`}: ${source.note}`;
}
