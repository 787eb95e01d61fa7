import { davies, isIdealLaw } from '../equilibrium/activity/laws.js';
import { readConditions } from '../equilibrium/conditions.js';
import { Faults } from '../input/faults.js';
import { makeTitration } from '../titration/make-titration.js';
import type { Asked } from './read-titration.js';

/** The same by the Davies equation, and how far that may be trusted. @internal */
export interface RealAsked extends Asked {
  /** Whether the ionic strength after `mL` of titrant is within the range of the law. */
  isInRangeAt(mL: number): boolean;
}

/**
 * An ideal titration with activity coefficients by Davies, set up when first asked for.
 *
 * Null where the titration is not ideal, where it has no setup, and where it is not the one of its setup: a caller can
 * put a method of their own in place of one that `titrate` made.
 *
 * @internal
 */
export function withDavies(asked: Asked): () => RealAsked | null {
  let made: { readonly titration: RealAsked | null } | undefined;
  return () => {
    made ??= { titration: daviesOf(asked) };
    return made.titration;
  };
}

function daviesOf({ setup, pHAt, equivalencePoints }: Asked): RealAsked | null {
  if (setup === null || !isIdealLaw(setup.inUse.activity)) return null;
  const titration = makeTitration(setup);
  const [point] = equivalencePoints;
  const isOwn = [0, point?.mL ?? 0].every((mL) => titration.pHAt(mL) === pHAt(mL));
  if (!isOwn) return null;
  const faults = new Faults('scoreIndicator');
  const inUse = readConditions({ ...setup.inUse.given, activity: davies }, 'conditions', faults);
  faults.done();
  const { pHAt: at, slopeAt, volumesAt, equilibriumAt } = makeTitration({ ...setup, inUse });
  return {
    pHAt: at,
    slopeAt,
    volumesAt,
    equivalencePoints,
    setup: { ...setup, inUse },
    isInRangeAt: (mL) => equilibriumAt(mL).ionicStrength <= (davies.upTo ?? 0),
  };
}
