import {
  type HydrogenIonSeries,
  hydrogenIonSeriesOf,
  toPH,
  writeNextHydrogenIon,
} from '../../equilibrium/hydrogen-ion-series.js';
import { numberAt } from '../../solver/number-at.js';
import type { MixtureModel } from '../model/mixture-model.js';

/**
 * pH at many volumes, each from the one before: about one evaluation of the charge balance a point where neighbours are
 * close, and nothing allocated per point.
 *
 * @param volumes - mL, in any order; ascending or descending is fastest
 * @param out - room for as many pH values
 * @param series - counts the evaluations
 * @internal
 */
export function writePHs(
  { system: { balance }, analyte, titrant }: MixtureModel,
  volumes: ArrayLike<number>,
  out: Float64Array,
  series: HydrogenIonSeries = hydrogenIonSeriesOf(balance),
): Float64Array {
  const { totals } = series;
  for (let k = 0; k < volumes.length; k += 1) {
    const mL = numberAt(volumes, k);
    totals[0] = analyte.volume + mL;
    totals[1] = analyte.charge + mL * titrant.charge;
    for (let i = 0; i < balance.families.length; i += 1)
      totals[i + 2] = numberAt(analyte.amounts, i) + mL * numberAt(titrant.amounts, i);
    writeNextHydrogenIon(balance, series, out, k);
  }
  toPH(out, volumes.length);
  return out;
}
