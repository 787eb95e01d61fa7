import { asSold, type SoldAs } from '../catalogue/as-sold.js';
import { entryOf } from '../entry-of.js';
import type { Reagent } from '../substance/reagent.js';

/** As what liquid a reagent of this mass fraction comes; undefined for a dry solid. @internal */
export function asBought({ id }: Reagent, purity: number): SoldAs | undefined {
  const sold = entryOf(asSold, id);
  if (!sold) return undefined;
  const [, strongest] = sold.range;
  return sold.alsoSolid && 100 * purity > strongest ? undefined : sold;
}

/**
 * The strengths on sale in words, where one cannot be taken for granted: they differ by more than a percent.
 *
 * @internal
 */
export function strengthsOnSale({ id }: Reagent): string | undefined {
  const sold = entryOf(asSold, id);
  if (!sold || sold.alsoSolid) return undefined;
  const [from, to] = sold.range;
  return to - from > 1 ? `${from} to ${to} %` : undefined;
}

/** The greatest mass fraction that a reagent is sold at, with room for a lot that is a little stronger. @internal */
export function strongestSold({ id }: Reagent): number {
  const sold = entryOf(asSold, id);
  return sold?.form === 'solution' && !sold.alsoSolid ? (sold.range[1] + 2) / 100 : 1;
}

/** The mass fraction of a liquid whose strength can be taken for granted; 1 of a dry solid. @internal */
export const usualPurity = (reagent: Reagent): number => (asBought(reagent, 1)?.massPercent ?? 100) / 100;

/**
 * Its volume by the density of the usual bottle, mL; null where its strength is more than a percent off that.
 *
 * @internal
 */
export function volumeOf(
  { density, massPercent }: SoldAs,
  purity: number,
  grams: number | null,
): number | null {
  return grams === null || Math.abs(100 * purity - massPercent) > 1 ? null : grams / density;
}
