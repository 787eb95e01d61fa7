import type { IndicatorScore } from './indicator-score.js';
import type { ReadOptions } from './score-options.js';

/** What is known of an indicator before it is put into words. */
interface Judged extends Pick<IndicatorScore, 'at' | 'change' | 'titrationError' | 'drops'> {
  /** Whether the analyte itself is already past the whole range. */
  readonly over: boolean;
}

/** Why the score is what it is, in one plain sentence. @internal */
export function reasonFor(judged: Judged, { tolerance, dropSize }: ReadOptions): string {
  const { at, change, titrationError, drops, over } = judged;
  if (over) return 'its change is over before the first drop of titrant';
  if (change.from === null) return 'the curve never comes into its range, so its colour does not change';
  if (titrationError === null)
    return change.from === 0
      ? 'past its end point before the first drop of titrant'
      : 'the curve does not get far enough for its end point';

  const reads = readingOf(titrationError.percent);
  if (change.to !== null && at.mL - change.to > tolerance)
    return `complete ${short(at.mL - change.to)} mL before the equivalence point: it ${reads}`;
  if (change.from - at.mL > tolerance)
    return `begins ${short(change.from - at.mL)} mL after the equivalence point: it ${reads}`;
  if (drops === null) return `begins after ${short(change.from)} mL and is never complete: it ${reads}`;
  if (drops <= 1) return `changes within one drop of the equivalence point: it ${reads}`;
  const span = `${short(drops)} drops of ${short(dropSize)} mL`;
  return `changes over ${span} across the equivalence point: it ${reads}`;
}

function readingOf(percent: number): string {
  if (Math.abs(percent) < 0.005) return 'would read true to 0.005 %';
  return `would read ${short(Math.abs(percent))} % ${percent < 0 ? 'low' : 'high'}`;
}

/** Two digits, or the whole number above that, as one would say it. */
function short(x: number): string {
  return x >= 100 ? x.toFixed(0) : String(Number(x.toPrecision(2)));
}
