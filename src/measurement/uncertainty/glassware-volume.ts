import { burettes, flasks, pipettes, type Vessel } from '../../catalogue/glassware.js';
import { frozen } from '../../frozen.js';
import { Faults } from '../../input/faults.js';
import { within } from './estimate-within.js';
import type { InputQuantity } from './input-quantity.js';

/** Which vessel measured a volume. */
export interface VesselUsed {
  readonly kind: 'burette' | 'pipette' | 'flask';
  /** Nominal volume, mL: one of ISO 385 (burettes), ISO 648 (pipettes) or ISO 1042 (flasks). */
  readonly size: number;
  /** Class of the vessel, A or B; A if left out. */
  readonly glass?: 'A' | 'B';
  /** mL delivered by a burette; the nominal volume for the others. */
  readonly mL?: number;
}

const known: Readonly<Record<VesselUsed['kind'], readonly Vessel[]>> = {
  burette: burettes,
  pipette: pipettes,
  flask: flasks,
};

/**
 * The volume, mL, that a vessel measured, with the standard uncertainty from its limits of error as a triangular
 * distribution, a/√6 (EURACHEM/CITAC CG 4; from memory).
 *
 * It is the calibration alone, at 20 °C: how well someone fills and reads is in the scatter of replicates. Limits of error
 * are those of ISO 385, ISO 648 and ISO 1042, whose pages are not checked. Burettes of 25 mL count as divided by 0.1 mL,
 * those of 10 mL by 0.02 mL.
 *
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { glasswareVolume } from 'protolysis/measurement';
 *
 * glasswareVolume({ kind: 'pipette', size: 25 }).standardUncertainty; // => 0.0122
 * glasswareVolume({ kind: 'burette', size: 50, mL: 24.3 }).standardUncertainty; // => 0.0204
 * ```
 */
export function glasswareVolume(vessel: VesselUsed): InputQuantity {
  const faults = new Faults('glasswareVolume');
  const keys = ['kind', 'size', 'glass', 'mL'];
  const unread = faults.object(vessel, 'vessel', 'a vessel { kind, size }', keys);
  const { kind, glass = 'A' } = unread;
  if (kind !== 'burette' && kind !== 'pipette' && kind !== 'flask')
    faults.add(
      kind === undefined ? 'missing' : 'wrong-type',
      'vessel.kind',
      "'burette', 'pipette' or 'flask'",
      kind,
    );
  if (glass !== 'A' && glass !== 'B') faults.add('wrong-type', 'vessel.glass', "'A' or 'B'", glass);
  const size = faults.number(unread.size, 'vessel.size', 'a nominal volume in mL');
  if (unread.mL !== undefined && kind !== 'burette')
    faults.add(
      'conflict',
      'vessel.mL',
      'no volume, but of a burette: a pipette or a flask measures its nominal one',
      unread.mL,
    );
  faults.done();
  const sizes = known[kind as VesselUsed['kind']];
  const found = sizes.find(({ mL }) => mL === size);
  if (found === undefined)
    faults.add('out-of-range', 'vessel.size', `one of ${sizes.map(({ mL }) => mL).join(', ')} mL`, size);
  const mL =
    unread.mL === undefined
      ? size
      : faults.number(unread.mL, 'vessel.mL', 'a volume in mL', { from: 0, to: size });
  faults.done();
  return frozen(within(mL, (found as Vessel).tolerance[glass as 'A' | 'B'], 'triangular'));
}
