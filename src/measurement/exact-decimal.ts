import { Decimal } from 'decimal.js';

const Exact = Decimal.clone({ defaults: true, precision: 60 });

/** A decimal as it was typed, with a decimal point or a decimal comma; undefined for anything else. @internal */
export function exactDecimal(text: string): Decimal | undefined {
  if (text.length > mostCharacters) return undefined;
  const plain = text.replace('−', '-').replace(',', '.');
  return /^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d{1,2})?$/.test(plain)
    ? new Exact(plain.replace(/^\+/, ''))
    : undefined;
}

/** Of a number in a line: more is a slip of the clipboard, and keeps every difference of two exact. */
const mostCharacters = 25;

/** A number as a decimal of that many digits. @internal */
export const toDecimal = (value: number): Decimal => new Exact(value);
