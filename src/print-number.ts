/** A number to so many decimals. What rounds to zero is printed without a sign. @internal */
export function fixed(value: number, decimals: number): string {
  const text = value.toFixed(decimals);
  return text.startsWith('-') && Number(text) === 0 ? text.slice(1) : text;
}

/** A number to four significant digits, without zeros at its end. @internal */
export const fourDigits = (value: number): string => String(Number(value.toPrecision(4)));

/** A number to so many significant digits, with the zeros at its end. @internal */
export function toDigits(value: number, digits: number): string {
  const text = value.toPrecision(digits);
  return text.includes('e') ? String(Number(text)) : text;
}
