import { Faults } from '../input/faults.js';
import { readComposition } from './formula.js';
import { printFormula } from './print-formula.js';

/** A number of one species, its formula in plain notation. An empty formula is no species. */
export interface Term {
  readonly count: number;
  readonly formula: string;
}

/**
 * A reaction equation in print, with water on whichever side it takes to balance.
 *
 * Labels of species may hide water: `CO2(aq)` is carbonic acid less H2O, `B(OH)4-` boric acid and OH-. So the water
 * given is dropped, and the whole molecules of H2O that one side lacks are put in. With labels that are not formulas
 * (`HEPES`) the water stays as given.
 *
 * @internal
 */
export function equation(left: readonly Term[], right: readonly Term[]): string {
  const sides = [left, right].map((side) =>
    side.filter(({ formula }) => formula !== '' && formula !== water),
  );
  const missing = waterMissing(sides[0] as Term[], sides[1] as Term[]);
  if (missing === undefined) return `${print(left)} → ${print(right)}`;
  const [before, after] = [Math.max(-missing, 0), Math.max(missing, 0)];
  return `${print([...(sides[0] as Term[]), molecules(before)])} → ${print([...(sides[1] as Term[]), molecules(after)])}`;
}

const water = 'H2O';
const molecules = (count: number): Term => ({ count, formula: water });

/** How many molecules of water the right side lacks; undefined where the difference is something else. */
function waterMissing(left: readonly Term[], right: readonly Term[]): number | undefined {
  const faults = new Faults('equation');
  const difference = new Map<string, number>();
  for (const [sign, side] of [
    [1, left],
    [-1, right],
  ] as const)
    for (const { count, formula } of side)
      for (const [element, atoms] of readComposition(formula, 'formula', faults))
        difference.set(element, (difference.get(element) ?? 0) + sign * count * atoms);
  const { H = 0, O = 0, ...others } = Object.fromEntries(difference);
  return faults.any || H !== 2 * O || Object.values(others).some((atoms) => atoms !== 0) ? undefined : O;
}

/** Joins equal formulas: `2 HC₂O₄⁻`. */
function print(terms: readonly Term[]): string {
  const counts = new Map<string, number>();
  for (const { count, formula } of terms)
    if (formula !== '') counts.set(formula, (counts.get(formula) ?? 0) + count);
  return [...counts]
    .filter(([, count]) => count > 0)
    .map(([formula, count]) => (count > 1 ? `${count} ${printFormula(formula)}` : printFormula(formula)))
    .join(' + ');
}
