/**
 * A volume as a burette of that size is read: to about a part in two thousand of the whole, 0.01 mL of 50 mL.
 *
 * @param upTo - the whole, mL
 * @internal
 */
export function printVolume(mL: number, upTo: number): string {
  if (upTo >= 1e5 || upTo < 1e-4) return printPlainly(mL);
  return minus(mL.toFixed(Math.max(0, Math.ceil(-Math.log10(upTo / 2000)))));
}

/** To 0.01. @internal */
export const printHundredths = (value: number): string => minus(value.toFixed(2));

/** A pH as a probe is read. @internal */
export const printPH = (pH: number): string => printHundredths(pH);

/** Three significant digits. @internal */
export const printPlainly = (value: number): string => minus(String(Number(value.toPrecision(3))));

/** All digits of a round number. @internal */
export const printExactly = (value: number): string => minus(String(Number(value.toPrecision(12))));

/** With the sign that print has, and no sign before a zero. */
const minus = (text: string): string => (/^-[0.]*$/.test(text) ? text.slice(1) : text.replace(/-/g, '−'));
