/**
 * The uncertainty to two digits and the value to its place; both over one power of ten where plain digits would end or
 * begin with many zeros. An uncertainty below the rounding of what was computed leaves ten digits of the value.
 *
 * @internal
 */
export function toOnePlace(
  value: number,
  uncertainty: number,
): { readonly value: string; readonly uncertainty: string; readonly power: string } {
  if (isNegligible(uncertainty, value))
    return {
      value: String(Number(value.toPrecision(10))),
      uncertainty: String(Number(uncertainty.toPrecision(2))),
      power: '',
    };
  const rounded = Number(uncertainty.toPrecision(2));
  const place = exponentOf(rounded) - 1;
  const top = Math.max(exponentOf(rounded), exponentOf(value));
  const shift = place > 0 || top < -4 ? top : 0;
  const scaled = (x: number): string => (x / 10 ** shift).toFixed(shift - place).replace(/^-(?=[0.]*$)/, '');
  return { value: scaled(value), uncertainty: scaled(rounded), power: shift === 0 ? '' : `·10^${shift}` };
}

/** Whether an uncertainty is none, or lies below the tenth digit of its value. @internal */
export const isNegligible = (uncertainty: number, value: number): boolean =>
  uncertainty < Math.max(1e-10 * Math.abs(value), 1e-100);

/** Of ten, in front of the first digit; of zero, below all others. */
const exponentOf = (x: number): number => (x === 0 ? -Infinity : Number(x.toExponential().split('e')[1]));
