import { toDigits } from '../../print-number.js';
import { isNegligible, toOnePlace } from './to-one-place.js';

/** The value to the place of the second digit of its standard uncertainty; five digits where that is none. @internal */
export function valueInLine(value: number, u: number, unit: string): string {
  if (isNegligible(u, value)) return `${toDigits(value, 5)} ${unit}`.trimEnd();
  const { value: printed, uncertainty, power } = toOnePlace(value, u);
  return `${printed}${power} ± ${uncertainty}${power} ${unit}`.trimEnd();
}
