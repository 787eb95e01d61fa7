/**
 * The sum of a list, as if it were added in twice the working precision and rounded once.
 *
 * Charges of strong ions cancel to the last digits in any neutral salt; added one by one, they would leave a rounding
 * error in place of zero.
 *
 * Good to     one rounding of the true sum, plus n²·2⁻¹⁰⁶ of the sum of absolute values
 * Source      A. Neumaier, Z. Angew. Math. Mech. 54, 39–51 (1974), doi:10.1002/zamm.19740540106
 */
export function sum(terms: readonly number[]): number {
  let total = 0;
  let lost = 0;
  for (const term of terms) {
    const next = total + term;
    lost += Math.abs(total) >= Math.abs(term) ? total - next + term : term - next + total;
    total = next;
  }
  return total + lost;
}
