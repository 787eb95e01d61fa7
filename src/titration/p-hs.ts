import { type Succession, successionOf, toPH, writeHydrogenIon } from '../equilibrium/hydrogen-ions.js';
import type { Engine } from './engine.js';

/**
 * pH at many volumes, each from the one before: about one evaluation of the charge balance a point where neighbours are
 * close, and nothing allocated per point.
 *
 * @param volumes - mL, in any order; ascending or descending is fastest
 * @param out - room for as many pH values
 * @param succession - counts the evaluations
 * @internal
 */
export function writePHs(
  { setting: { balance }, analyte, titrant }: Engine,
  volumes: ArrayLike<number>,
  out: Float64Array,
  succession: Succession = successionOf(balance),
): Float64Array {
  const { totals } = succession;
  for (let k = 0; k < volumes.length; k += 1) {
    const mL = volumes[k] as number;
    totals[0] = analyte.volume + mL;
    totals[1] = analyte.charge + mL * titrant.charge;
    for (let i = 0; i < balance.families.length; i += 1)
      totals[i + 2] = (analyte.amounts[i] as number) + mL * (titrant.amounts[i] as number);
    writeHydrogenIon(balance, succession, out, k);
  }
  toPH(out, volumes.length);
  return out;
}
