import { frozen } from '../../frozen.js';
import { Faults } from '../../input/faults.js';
import type { CurveModel } from '../model/curve-model.js';
import { titrationLimits } from '../titration-limits.js';
import { readVolume } from './curve.js';

/** Defaults of `titrate`: `within`, mL, to either side of a jump (a drop of a burette). */
export const titrationDefaults = /*#__PURE__*/ frozen({ within: 0.05 } as const);

/** pH `within` mL after a volume less pH `within` mL before it, both read from the caller's values. @internal */
export function jumpAt(curveModel: CurveModel, mL: number, options?: { readonly within?: number }): number {
  const faults = new Faults('jumpAt');
  const middle = readVolume(mL, 'mL', faults);
  const unread =
    options === undefined ? {} : faults.object(options, 'options', 'options { within }', ['within']);
  const within =
    unread.within === undefined
      ? titrationDefaults.within
      : faults.number(unread.within, 'options.within', 'a volume in mL', {
          above: 0,
          to: titrationLimits.mL,
        });
  if (!faults.any && middle - within < 0)
    faults.add(
      'out-of-range',
      'mL',
      `a volume of at least ${within} mL, so that there is a point before it`,
      mL,
    );
  if (!faults.any) readVolume(middle + within, 'mL + within', faults);
  faults.done();
  return curveModel.pHAt(middle + within) - curveModel.pHAt(middle - within);
}
