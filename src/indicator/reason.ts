import type { IndicatorScore } from './indicator-score.js';

/** What is known of an indicator before it is put into words. */
interface Judged extends Pick<IndicatorScore, 'at' | 'change' | 'titrationError' | 'drops'> {
  /** Whether the analyte itself is already past the call, and past the whole range. */
  readonly past: { readonly call: boolean; readonly range: boolean };
}

/** Why the score is what it is, in one plain sentence. @internal */
export function reasonFor(judged: Judged, dropSize: number): string {
  const { change, titrationError, past } = judged;
  if (past.range) return 'its change is over before the first drop of titrant';
  if (past.call) return 'it is past its end point before the first drop of titrant';
  if (change.from === null) return 'the curve never comes into its range, so its colour does not change';
  if (titrationError === null) return 'the curve does not get far enough for its end point';
  return `${courseOf(judged, change.from, dropSize)}: it ${readingOf(titrationError.percent)}`;
}

/** How the change lies about the equivalence point; what is no more than a drop off counts as at the point. */
function courseOf({ at, change: { to }, drops }: Judged, from: number, dropSize: number): string {
  const [early, late] = [at.mL - dropSize, at.mL + dropSize];
  if (from > late) return `begins ${short(from - at.mL)} mL after the equivalence point`;
  if (to === null || drops === null) {
    if (from === 0) return 'has begun before the first drop of titrant and is never complete';
    const side = from < at.mL ? 'before' : 'after';
    return `begins ${short(Math.abs(from - at.mL))} mL ${side} the equivalence point and is never complete`;
  }
  if (to < early) return `complete ${short(at.mL - to)} mL before the equivalence point`;
  if (from >= early && to <= late) return 'changes within one drop of the equivalence point';

  const over = `changes over ${short(drops)} drops of ${short(dropSize)} mL`;
  if (to < at.mL) return `${over}, ending within a drop before the equivalence point`;
  if (from > at.mL) return `${over}, beginning within a drop after the equivalence point`;
  return `${over} across the equivalence point`;
}

function readingOf(percent: number): string {
  if (Math.abs(percent) < 0.005) return 'would read true to 0.005 %';
  return `would read ${short(Math.abs(percent))} % ${percent < 0 ? 'low' : 'high'}`;
}

/** Two digits, or the whole number above that, as one would say it. */
function short(x: number): string {
  return x >= 100 ? x.toFixed(0) : String(Number(x.toPrecision(2)));
}
