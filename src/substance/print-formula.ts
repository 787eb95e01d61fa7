import { Faults } from '../input/faults.js';

/**
 * A formula in plain notation as print has it, with sub- and superscripts; other labels stay legible.
 *
 * One charge stands bare at the end, several in brackets (`HCO3-`, `CO3(2-)`), so that a charge never looks like a
 * count.
 *
 * @throws InputError if `formula` is not a text of 1 to 200 characters
 * @example
 * ```ts
 * import { printFormula } from 'protolysis';
 *
 * printFormula('HCO3-'); // => 'HCO₃⁻'
 * printFormula('CO3(2-)'); // => 'CO₃²⁻'
 * printFormula('Na2CO3.10H2O'); // => 'Na₂CO₃·10H₂O'
 * ```
 */
export function printFormula(formula: string): string {
  const faults = new Faults('printFormula');
  const plain = faults.text(formula, 'formula', 'a formula');
  faults.done();

  return plain.replace(chargeAtEnd, raised).replace(dotOrCount, lowered);
}

/** Before a state, if there is one. */
const chargeAtEnd = /(?:\([1-9]\d*[+-]\)|(?<=[A-Za-z\d)\]}])[+-])(?=(?:\((?:aq|s|l|g)\))?$)/;

/** A dot between parts with its factor, which stays as it is, or a count, which becomes a subscript. */
const dotOrCount =
  /(?<=[A-Za-z\d)\]}])[·*.](?=\d*(?:\.\d+)?[A-Z([{])(?:\d+(?:\.\d+)?)?|(?<=[A-Za-z)\]}])\d+/g;

const raised = (charge: string): string =>
  charge.replace(/[()]/g, '').replace(/./g, (sign) => '⁰¹²³⁴⁵⁶⁷⁸⁹⁺⁻'.charAt('0123456789+-'.indexOf(sign)));

const lowered = (match: string): string =>
  /^\d/.test(match)
    ? match.replace(/\d/g, (digit) => '₀₁₂₃₄₅₆₇₈₉'.charAt(Number(digit)))
    : `·${match.slice(1)}`;
