import { colourOf, type Dye } from '../indicator/colour-at.js';
import { indicatorDefaults } from '../indicator/score-options.js';
import type { Transition } from '../substance/indicator.js';
import type { Titration } from '../titration/titration.js';
import { equivalenceVolumes } from './drawn-curve.js';
import type { Strip } from './figure.js';
import { printPlainly, printVolume } from './print-quantity.js';
import { type PlotWords, say } from './words.js';

/** The strip of an indicator under a titration curve: the colour of the flask at each volume, and where it changes. @internal */
export function indicatorStrip(titration: Titration, dye: Dye, upTo: number, words: PlotWords): Strip {
  const { name: indicator, transition } = dye.indicator;
  const colourOfFlask = (mL: number) => colourOf(dye, titration.pHAt(mL), indicatorDefaults.indicatorDrops);
  const [start, end] = [colourOfFlask(0).name, colourOfFlask(upTo).name];
  const changes = changesAlong(titration, transition, upTo).map((change) => ({
    ...change,
    text: sayChange(change, upTo, words),
  }));
  const caption = say(start === end ? words.captionAlike : words.caption, { indicator, start, end });
  return {
    kind: 'strip',
    caption: changes.length > 0 ? caption : `${caption}; ${say(words.neverInRange, rangeOf(transition))}`,
    colours: coloursAlong((mL) => colourOfFlask(mL).hex, upTo),
    changes,
    rules: equivalenceVolumes(titration, upTo),
  };
}

/**
 * The stretches of volume over which pH lies in the range of an indicator, mL. A curve that was boiled out may have
 * more than one.
 */
function changesAlong(
  titration: Pick<Titration, 'pHAt' | 'volumesAt'>,
  { from, to }: Transition,
  upTo: number,
): { readonly from: number; readonly to: number }[] {
  const crossings = [...titration.volumesAt(from), ...titration.volumesAt(to)].filter(
    (mL) => mL > 0 && mL < upTo,
  );
  const ends = [0, ...crossings.sort((a, b) => a - b), upTo];
  const changes: { from: number; to: number }[] = [];
  for (const [k, start] of ends.slice(0, -1).entries()) {
    const end = ends[k + 1] as number;
    const pH = titration.pHAt((start + end) / 2);
    if (pH < from || pH > to) continue;
    const last = changes.at(-1);
    if (last?.to === start) last.to = end;
    else changes.push({ from: start, to: end });
  }
  return changes;
}

function sayChange(
  { from, to }: { readonly from: number; readonly to: number },
  upTo: number,
  words: PlotWords,
) {
  const volumes = { from: printVolume(from, upTo), to: printVolume(to, upTo) };
  if (from === 0) return say(to === upTo ? words.changeThroughout : words.changeFromStart, volumes);
  return say(to === upTo ? words.changeUnfinished : words.change, volumes);
}

const rangeOf = ({ from, to }: Transition) => ({ from: printPlainly(from), to: printPlainly(to) });

/** How many colours a strip is divided into: about one a pixel of a usual picture. */
const cells = 600;
/** Neighbours that differ by no more than this in each channel, of 255, are drawn as one. */
const alike = 4;

/** Runs of one colour along the volume. */
function coloursAlong(hexAt: (mL: number) => string, upTo: number): Strip['colours'] {
  const runs: { from: number; to: number; hex: string }[] = [];
  for (let k = 0; k < cells; k += 1) {
    const hex = hexAt(((k + 0.5) / cells) * upTo);
    const to = ((k + 1) / cells) * upTo;
    const last = runs.at(-1);
    if (last && isAlike(last.hex, hex)) last.to = to;
    else runs.push({ from: last?.to ?? 0, to, hex });
  }
  return runs;
}

const isAlike = (a: string, b: string): boolean =>
  [1, 3, 5].every((k) => Math.abs(channel(a, k) - channel(b, k)) <= alike);

const channel = (hex: string, k: number): number => Number.parseInt(hex.slice(k, k + 2), 16);
