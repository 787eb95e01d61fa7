import { Decimal } from 'decimal.js';
import type { Faults } from '../../input/faults.js';
import { describeLimits, type Limits } from '../../input/limits.js';
import { compared, type Ratio, ratioOf } from './ratio.js';

/**
 * A number exactly as it was written: a decimal text such as `'0.1000'` or `'1e-7'`, a fraction such as `'2/3'`, a
 * Decimal, or a number, which stands for the shortest decimal that gives it (0.1 is one tenth).
 */
export type Exactly = string | number | Decimal;

/** The decimal that a number was written as. @internal */
export const exactly = (value: number): Ratio => ratioOf(String(value)) as Ratio;

/** The nearest double. @internal */
export const numberOf = ({ numerator, denominator }: Ratio): number =>
  Wide.div(`${numerator}`, `${denominator}`).toNumber();

const Wide = Decimal.clone({ defaults: true, precision: 40 });

/** Reads such a number from a caller's value, noting every fault. @internal */
export function readExactly(
  value: unknown,
  path: string,
  what: string,
  limits: Limits,
  faults: Faults,
): Ratio {
  const ratio = readable(value);
  const allowed = `${what}${describeLimits(limits)}`;
  if (value === undefined) faults.add('missing', path, allowed, value);
  else if (ratio === undefined)
    faults.add('wrong-type', path, `${allowed}, as a number or a text such as '0.1'`, value);
  else if (!within(ratio, limits)) faults.add('out-of-range', path, allowed, value);
  else return ratio;
  return exactly(limits.from ?? limits.to ?? 1);
}

function within(ratio: Ratio, { above, from, to }: Limits): boolean {
  if (above !== undefined && compared(ratio, exactly(above)) <= 0) return false;
  if (from !== undefined && compared(ratio, exactly(from)) < 0) return false;
  return to === undefined || compared(ratio, exactly(to)) <= 0;
}

/** Longer texts are no quantities, but would take long to work with. */
const longest = 20_000;

function readable(value: unknown): Ratio | undefined {
  try {
    if (typeof value !== 'number' && typeof value !== 'string' && !Decimal.isDecimal(value)) return undefined;
    const text = String(value);
    return text.length <= longest ? ratioOf(text) : undefined;
  } catch {
    return undefined; // a thing that only claims to be a Decimal
  }
}
