import type { CapacityCurve, CapacityPeak } from '../buffer/capacity-over.js';
import { Faults } from '../input/faults.js';
import { roundAxis } from './axis.js';
import { pointsOf } from './drawn-curve.js';
import type { Mark, PlotLine } from './figure.js';
import { inkOf, paleInk } from './inks.js';
import { layOut } from './lay-out.js';
import type { Picture } from './picture.js';
import { plainPanel } from './plain-panel.js';
import { type PlotOptions, readPlotOptions } from './plot-options.js';
import { printPH, printPlainly } from './print-quantity.js';
import { readCapacityCurve } from './read-capacity-curve.js';
import { type PlotWords, say } from './words.js';

/**
 * Buffer capacity over pH, with each peak and the range over which it is useful.
 *
 * @param curve - as `capacityOver` gives it
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { capacityOver, makeSolution, reagents } from 'protolysis';
 * import { drawCapacity } from 'protolysis/plot';
 *
 * const acetate = makeSolution({ contents: [{ reagent: reagents.aceticAcid, molar: 0.1 }] });
 * const { description } = drawCapacity(capacityOver(acetate, { from: 2.5, to: 7 }));
 * description.startsWith('Peak of 0.0576 mol/L per pH unit at pH 4.76.'); // => true
 * ```
 */
export function drawCapacity(curve: CapacityCurve, options?: PlotOptions): Picture {
  const faults = new Faults('drawCapacity');
  const { pH, capacity, peaks, usefulShare } = readCapacityCurve(curve, faults);
  const { width, title, words } = readPlotOptions(options, [], faults);
  faults.done();

  const [from, to] = [pH[0] as number, pH.at(-1) as number];
  const usefulOf = ({ useful }: CapacityPeak): Ends => ({ from: useful.from ?? from, to: useful.to ?? to });
  return layOut(
    {
      title: title ?? words.capacityOverPH,
      description: peaks
        .flatMap((peak) => [say(words.describePeak, printed(peak)), sayUseful(peak, words)])
        .join(' '),
      x: { name: words.pH, from, to },
      rows: [
        plainPanel(roundAxis(words.capacity, [0, ...capacity, ...peaks.map((peak) => peak.capacity)]), {
          lines: [
            { points: pointsOf(pH, capacity), stroke: inkOf(0), name: '' },
            ...peaks.map((peak) => usefulLine(peak, usefulShare, usefulOf(peak))),
          ],
          marks: peaks.map((peak) => peakMark(peak, words)),
        }),
      ],
      notes: peaks.map((peak) => sayUseful(peak, words)),
      noRoom: words.noRoom,
    },
    width,
  );
}

const printed = ({ pH, capacity }: CapacityPeak) => ({ pH: printPH(pH), capacity: printPlainly(capacity) });

/** Over which pH a peak is useful: as far as the curve where it goes on beyond that. */
interface Ends {
  readonly from: number;
  readonly to: number;
}

/** Level, at the capacity that still counts as useful, from one side of a peak to the other. */
const usefulLine = ({ capacity }: CapacityPeak, share: number, { from, to }: Ends): PlotLine => ({
  points: [from, to].map((x) => ({ x, y: share * capacity })),
  stroke: { colour: paleInk, width: 1.5, dash: '6 3' },
  name: '',
});

const peakMark = (peak: CapacityPeak, words: PlotWords): Mark => ({
  at: { x: peak.pH, y: peak.capacity },
  lines: [say(words.atPH, printed(peak)), say(words.peak, printed(peak))],
  short: [say(words.atPH, printed(peak)), printPlainly(peak.capacity)],
  key: words.keyToPeak,
  shape: 'ring',
  hasRule: false,
});

/** An end beyond the curve is not known: that of the curve does not stand for it. */
function sayUseful({ pH, useful: { from, to } }: CapacityPeak, words: PlotWords): string {
  const above = to === null ? words.usefulFrom : words.useful;
  const below = to === null ? words.usefulThroughout : words.usefulTo;
  const [fromPH, toPH] = [from, to].map((end) => (end === null ? '' : printPH(end)));
  return say(from === null ? below : above, { pH: printPH(pH), from: fromPH ?? '', to: toPH ?? '' });
}
