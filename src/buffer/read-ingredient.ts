import { at, type Faults } from '../input/faults.js';
import { isList } from '../input/safe-read.js';
import { strengthsOnSale, strongestSold, usualPurity } from '../recipe/as-bought.js';
import { readSolution } from '../solution/read-solution.js';
import type { Content, Solution } from '../solution/solution.js';
import { type Reagent, readReagent } from '../substance/reagent.js';
import { bufferLimits } from './buffer-defaults.js';

/** An ingredient by the unit in which it is measured out: one mmol of a reagent, or one mL of a stock. */
export interface MeasuredIngredient {
  readonly name: string;
  readonly unit: readonly Content[];
  /** Of a stock; null for what is weighed. */
  readonly stock: Solution | null;
  /** Mass fraction of what is weighed. */
  readonly purity: number;
}

/** Reads an ingredient from a caller's value, noting every fault. @internal */
export function readIngredient(value: unknown, path: string, faults: Faults): MeasuredIngredient {
  const before = faults.count;
  const unread = faults.object(value, path, 'a reagent, { reagent, purity } or a stock solution');
  if (faults.count > before) return nothing;
  if (isList(unread.contents)) return readStock(value, path, faults);
  if (unread.reagent === undefined) {
    const reagent = readReagent(value, path, faults);
    if (faults.count > before) return nothing;
    const strengths = strengthsOnSale(reagent);
    if (strengths === undefined) return weighed(reagent, usualPurity(reagent));
    const wanted = `a stock solution or { reagent, purity }, with the mass fraction on the bottle (on sale are ${strengths})`;
    faults.add('missing', path, wanted, reagent, `${reagent.name} without its strength`);
    return nothing;
  }
  faults.object(value, path, 'an ingredient { reagent, purity }', ['reagent', 'purity']);
  const reagent = readReagent(unread.reagent, at(path, 'reagent'), faults);
  const [from, to] = bufferLimits.purity;
  const purity = faults.number(unread.purity, at(path, 'purity'), 'a mass fraction', { from, to });
  if (faults.count > before) return nothing;
  const strongest = strongestSold(reagent);
  if (purity > strongest) {
    const wanted = `a mass fraction of at most ${strongest}: no stronger ${reagent.name} is sold`;
    faults.add('out-of-range', at(path, 'purity'), wanted, purity);
    return nothing;
  }
  return weighed(reagent, purity);
}

/** Takes the place of an ingredient that could not be read, so that reading goes on. @internal */
export const nothing: MeasuredIngredient = { name: '', unit: [], stock: null, purity: 1 };

/** A reagent that is weighed, by the mmol of it. @internal */
export const weighed = (reagent: Reagent, purity: number): MeasuredIngredient => ({
  name: purity === 1 ? reagent.name : `${reagent.name} (${Number((100 * purity).toPrecision(4))} % by mass)`,
  unit: [{ reagent, mmol: 1 }],
  stock: null,
  purity,
});

function readStock(value: unknown, path: string, faults: Faults): MeasuredIngredient {
  const before = faults.count;
  const stock = readSolution(value, path, faults);
  if (faults.count > before) return nothing;

  const unit = stock.contents.map(({ reagent, mmol }) => ({ reagent, mmol: mmol / stock.mL }));
  const [, most] = bufferLimits.molar;
  for (const [k, { mmol }] of unit.entries())
    if (mmol > most)
      faults.add('out-of-range', `${path}.contents[${k}]`, `a stock of at most ${most} mol/L`, mmol);
  const held = unit.map(({ reagent, mmol }) => `${Number(mmol.toPrecision(4))} mol/L ${reagent.name}`);
  return { name: held.length === 0 ? 'water' : held.join(' + '), unit, stock, purity: 1 };
}
