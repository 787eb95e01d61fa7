import type { BufferResponse } from '../buffer/buffer-response.js';
import { Faults } from '../input/faults.js';
import { titrationLimits } from '../titration/titration-limits.js';
import { roundAxis } from './axis.js';
import { pointsOf } from './drawn-curve.js';
import type { Dots, PlotLine, Point } from './figure.js';
import { inkOf } from './inks.js';
import { layOut } from './lay-out.js';
import type { Picture } from './picture.js';
import { plainPanel } from './plain-panel.js';
import { type PlotOptions, plotLimits, readPlotOptions } from './plot-options.js';
import { printPH } from './print-quantity.js';
import { say } from './words.js';

/** What the curves of a buffer's response are called. */
export interface BufferPicture extends PlotOptions {
  /** Of each of the liquids that the response has beside buffer and water. */
  readonly besideNames?: readonly string[];
}

/**
 * The pH of a buffer after each addition, beside the same volume of water and of other liquids.
 *
 * @param response - as `bufferResponse` gives it
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { bufferResponse, makeSolution, reagents } from 'protolysis';
 * import { drawBuffer } from 'protolysis/plot';
 *
 * const response = bufferResponse(
 *   makeSolution({
 *     mL: 50,
 *     contents: [
 *       { reagent: reagents.sodiumDihydrogenPhosphate, molar: 0.05 },
 *       { reagent: reagents.disodiumHydrogenPhosphate, molar: 0.05 },
 *     ],
 *   }),
 *   { add: makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 1 }] }), drops: 10 },
 * );
 * drawBuffer(response).description; // => 'buffer: from pH 7.20 to pH 7.02. water: from pH 7.00 to pH 2.00.'
 * ```
 */
export function drawBuffer(response: BufferResponse, options?: BufferPicture): Picture {
  const faults = new Faults('drawBuffer');
  const { mL, columns } = readResponse(response, faults);
  const { width, title, words, unread } = readPlotOptions(options, ['besideNames'], faults);
  const given = readNames(unread.besideNames, columns.length - 2, faults);
  faults.done();

  const names = [
    words.bufferName,
    words.waterName,
    ...columns.slice(2).map((_, k) => given?.[k] ?? say(words.besideName, { number: k + 1 })),
  ];
  const order = mL.map((_, k) => k).sort((a, b) => (mL[a] as number) - (mL[b] as number));
  const points = columns.map((pH) =>
    pointsOf(
      order.map((k) => mL[k] as number),
      order.map((k) => pH[k] as number),
    ),
  );
  const lines = points.map(
    (line, k): PlotLine => ({ points: line, stroke: inkOf(k), name: names[k] as string }),
  );
  const dots = points.map((line): Dots => ({ points: line, name: '', isReading: false }));
  const atEnd = (point: Point | undefined) => say(words.plainPH, { pH: printPH(point?.y ?? 0) });
  return layOut(
    {
      title: title ?? words.buffer,
      description: lines
        .map(({ name, points: line }) =>
          say(words.describeLine, { name, from: atEnd(line.at(0)), to: atEnd(line.at(-1)) }),
        )
        .join(' '),
      x: { name: words.addedToBuffer, from: 0, to: Math.max(...mL) || 1 },
      rows: [plainPanel(roundAxis(words.pH, columns.flat()), { lines, dots })],
      notes: [],
      noRoom: words.noRoom,
    },
    width,
  );
}

function readResponse(value: unknown, faults: Faults) {
  const keys = ['mL', 'pH', 'water', 'beside'];
  const unread = faults.object(value, 'response', 'a response as bufferResponse gives it', keys);
  const before = faults.count;
  const pHs = (column: unknown, path: string) =>
    Array.from(faults.numbers(column, path, 'a pH', titrationLimits.pH, plotLimits.points));
  const volume = { from: 0, to: titrationLimits.mL };
  const mL = Array.from(
    faults.numbers(unread.mL, 'response.mL', 'a volume in mL', volume, plotLimits.points),
  );
  const beside = faults.list(unread.beside, 'response.beside', 'a list of columns', 0, plotLimits.curves - 2);
  const columns = [unread.pH, unread.water, ...beside].map((column, k) => ({ column, path: pathOf(k) }));
  const read = columns.map(({ column, path }) => ({ path, pH: pHs(column, path) }));
  if (faults.count === before) {
    if (mL.length === 0) faults.add('out-of-range', 'response.mL', 'at least one volume', mL);
    for (const { path, pH } of read)
      if (pH.length !== mL.length)
        faults.add('conflict', path, `as many as there are volumes, ${mL.length}`, pH);
  }
  return { mL, columns: read.map(({ pH }) => pH) };
}

const pathOf = (k: number): string => ['response.pH', 'response.water'][k] ?? `response.beside[${k - 2}]`;

function readNames(value: unknown, count: number, faults: Faults): readonly string[] | null {
  if (value === undefined) return null;
  const names = faults.list(value, 'options.besideNames', 'a list of names');
  if (names.length !== count && !faults.any)
    faults.add('conflict', 'options.besideNames', `as many as there are liquids beside, ${count}`, value);
  return names.map((name, k) => faults.text(name, `options.besideNames[${k}]`, 'a name', 60));
}
