import type { Faults } from '../input/faults.js';
import type { Indicator } from '../substance/indicator.js';
import type { LeftOut } from '../substance/left-out.js';

/**
 * Parts a list into what is ranked and what is not for use and not named in `include`, noting every fault.
 *
 * @internal
 */
export function readChoice(
  indicators: readonly Indicator[],
  include: unknown,
  faults: Faults,
): { readonly chosen: readonly Indicator[]; readonly leftOut: readonly LeftOut[] } {
  const named =
    include === undefined ? [] : faults.list(include, 'include', 'a list of ids of indicators', 0, 1000);
  const ids = named.map((one, k) => faults.text(one, `include[${k}]`, 'the id of an indicator'));
  if (!faults.any)
    for (const [k, id] of ids.entries())
      if (!indicators.some((indicator) => indicator.id === id))
        faults.add('unknown-substance', `include[${k}]`, 'the id of an indicator of the list', id);

  const isLeftOut = (one: Indicator): one is Barred => one.notForUse !== undefined && !ids.includes(one.id);
  return {
    chosen: indicators.filter((indicator) => !isLeftOut(indicator)),
    leftOut: indicators
      .filter(isLeftOut)
      .map(({ id, name, notForUse }) => ({ id, name, reason: notForUse.reason })),
  };
}

/** What is not for use. */
type Barred = Indicator & Required<Pick<Indicator, 'notForUse'>>;
