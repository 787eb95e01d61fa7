import { fixed } from '../print-number.js';
import type { IndicatorScore } from './indicator-score.js';

/** What is known of an indicator before it is put into words. */
interface Judged extends Pick<IndicatorScore, 'indicator' | 'at' | 'change' | 'titrationError'> {
  /** Whether the analyte itself is already past the call, and past the whole range. */
  readonly past: { readonly call: boolean; readonly range: boolean };
}

/**
 * Why the score is what it is: "Methyl red changes 0.18 mL before the equivalence point; the result would be 4.1 %
 * low."
 *
 * The indicator is the subject of every sentence, and the result that of its second half. A further sentence says where
 * it is not to be used, and where the Davies equation leads to another verdict.
 *
 * @internal
 */
export function reasonFor(
  judged: Judged,
  dropSize: number,
  { verdict, withDavies }: Pick<IndicatorScore, 'verdict' | 'withDavies'>,
): string {
  const { indicator, titrationError } = judged;
  const sentences = [
    `${capital(indicator.name)} ${courseOf(judged, dropSize)}; ${resultOf(titrationError?.percent)}.`,
  ];
  if (withDavies && withDavies.verdict !== verdict)
    sentences.push(
      `By the Davies equation${withDavies.inRange ? '' : ', here beyond its range,'} it is ${inWords[withDavies.verdict]}, and ${resultOf(withDavies.titrationError?.percent)}.`,
    );
  if (indicator.notForUse !== undefined) sentences.push(`It is not for use here: ${indicator.notForUse}.`);
  return sentences.join(' ');
}

const inWords = {
  'well suited': 'well suited',
  suitable: 'suitable',
  'with care': 'to be used with care',
  unsuitable: 'unsuitable',
} as const;

/** How the change lies about the equivalence point; what is no more than a drop off counts as at the point. */
function courseOf({ at, change, past, titrationError }: Judged, dropSize: number): string {
  const { from, to } = change;
  if (past.range) return 'has changed before the first drop of titrant';
  if (past.call) return 'is past its end point before the first drop of titrant';
  if (from === null) return 'does not change, because the curve never comes into its range';
  if (titrationError === null) return 'begins to change, but does not get to its end point';

  const [early, late] = [at.mL - dropSize, at.mL + dropSize];
  if (to === null) {
    if (from === 0)
      return 'has begun to change before the first drop of titrant and never completes its change';
    const off = short(Math.abs(from - at.mL));
    const where = from < early ? `${off} mL before` : from > late ? `${off} mL after` : 'within a drop of';
    return `begins to change ${where} the equivalence point and never completes its change`;
  }
  if (from > late) return `begins to change ${short(from - at.mL)} mL after the equivalence point`;
  if (to < early) return `changes ${short(at.mL - to)} mL before the equivalence point`;
  if (from >= early && to <= late) return 'changes within one drop of the equivalence point';

  const count = short((to - from) / dropSize);
  const over = `changes over ${count} ${count === '1' ? 'drop' : 'drops'} of ${short(dropSize)} mL`;
  if (to < at.mL) return `${over}, ending within a drop before the equivalence point`;
  if (from > at.mL) return `${over}, beginning within a drop after the equivalence point`;
  return `${over} across the equivalence point`;
}

function resultOf(percent: number | undefined): string {
  if (percent === undefined) return 'there would be no result';
  if (Math.abs(percent) < 0.005) return 'the result would be true to 0.005 %';
  return `the result would be ${short(Math.abs(percent))} % ${percent < 0 ? 'low' : 'high'}`;
}

/** A name at the head of a sentence: `p-Nitrophenol` and `2,4-Dinitrophenol`, since a locant stays as it is. */
const capital = (name: string): string =>
  name.replace(
    /^(?:(?:[a-zα-ω]|[\d,]+)-)?[a-z](?=[a-z])/,
    (start) => start.slice(0, -1) + start.slice(-1).toUpperCase(),
  );

/** Two digits, or the whole number above that, as one would say it. */
function short(x: number): string {
  return x >= 100 ? fixed(x, 0) : String(Number(x.toPrecision(2)));
}
