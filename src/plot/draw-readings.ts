import { Faults } from '../input/faults.js';
import { readReadingColumns } from '../measurement/read-reading-columns.js';
import type { Readings } from '../measurement/readings.js';
import { makeTitration } from '../titration/make-titration.js';
import type { Titration } from '../titration/titration.js';
import { roundAxis } from './axis.js';
import { describeTitration } from './describe-titration.js';
import { drawnCurve, equivalenceVolumes, pointsOf } from './drawn-curve.js';
import { farthestFromZero } from './farthest-from-zero.js';
import type { Area, Panel } from './figure.js';
import { layOut } from './lay-out.js';
import { namesOf } from './names-of.js';
import { pHPanel } from './ph-panel.js';
import type { Picture } from './picture.js';
import { plainPanel } from './plain-panel.js';
import { type PlotOptions, readPlotOptions } from './plot-options.js';
import { printPH, printVolume } from './print-quantity.js';
import { readDrawnSetup, readUpTo, usualUpTo } from './read-drawn.js';
import { type Envelope, readEnvelope } from './read-envelope.js';
import { type PlotWords, say } from './words.js';

/** What a picture of readings shows beside them. */
export interface ReadingsPicture extends PlotOptions {
  /** mL; as far as the readings go if left out. */
  readonly upTo?: number;
  /** An area about the prediction, such as its uncertainty; the panel of differences shows it too. */
  readonly envelope?: Envelope;
}

/**
 * What was read over what was predicted; below, each reading less the prediction at its volume.
 *
 * @param readings - as from `readReadings`: `mL` and `pH` columns
 * @param titration - the prediction, as `titrate` returns it
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { makeSolution, reagents, titrate } from 'protolysis';
 * import { drawReadings } from 'protolysis/plot';
 *
 * const titration = titrate({
 *   analyte: makeSolution({ mL: 25, contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] }),
 *   titrant: makeSolution({ contents: [{ reagent: reagents.sodiumHydroxide, molar: 0.1 }] }),
 * });
 * const readings = { mL: [0, 10, 20, 24, 26, 30], pH: [1.05, 1.4, 2.01, 2.7, 11.25, 11.9], notes: [] };
 * const { description } = drawReadings(readings, titration);
 * description.includes('6 readings; the largest difference from the prediction is 0.06 pH at 20.00 mL.'); // => true
 * ```
 */
export function drawReadings(
  readings: Readings,
  titration: Pick<Titration, 'setup'>,
  options?: ReadingsPicture,
): Picture {
  const faults = new Faults('drawReadings');
  const read = readReadingColumns(readings, 'readings', faults, { least: 1, rising: false });
  const setup = readDrawnSetup(titration, 'titration', faults);
  const { width, title, words, unread } = readPlotOptions(options, ['upTo', 'envelope'], faults);
  const upToGiven = readUpTo(unread.upTo, faults);
  const envelope = readEnvelope(unread.envelope, upToGiven, faults);
  const last = Math.max(...read.mL);
  if (!faults.any && upToGiven !== null && last > upToGiven)
    faults.add('conflict', 'options.upTo', `a volume as far as the readings go, ${last} mL`, upToGiven);
  faults.done();

  const drawn = makeTitration(setup);
  const upTo = upToGiven ?? (Math.max(last, envelope?.x.at(-1) ?? 0) || usualUpTo(drawn));
  const differences = differencesFrom(drawn, read.mL, read.pH);
  const points = pointsOf(read.mL, read.pH);
  return layOut(
    {
      title: title ?? say(words.titration, namesOf(drawn.setup)),
      description: [
        ...describeTitration(drawn, upTo, words),
        describeDifferences(read.mL, differences, upTo, words),
      ].join(' '),
      x: { name: words.added, from: 0, to: upTo },
      rows: [
        pHPanel(drawn, drawnCurve(drawn, upTo), words, {
          areas: envelope ? [envelope] : [],
          dots: [{ points, name: words.readings, isReading: true }],
          name: words.predicted,
        }),
        differencePanel(drawn, { mL: read.mL, differences, upTo }, envelope, words),
      ],
      notes: [],
      noRoom: words.noRoom,
    },
    width,
  );
}

/** Each pH less that of the titration at its volume. */
function differencesFrom(titration: Titration, mL: readonly number[], pH: readonly number[]): number[] {
  const predicted = titration.pHs(mL);
  return pH.map((value, k) => value - (predicted[k] as number));
}

interface Differences {
  readonly mL: readonly number[];
  readonly differences: readonly number[];
  readonly upTo: number;
}

/** About zero, which is the prediction. */
function differencePanel(
  titration: Titration,
  { mL, differences, upTo }: Differences,
  envelope: Area | null,
  words: PlotWords,
): Panel {
  const areas = envelope
    ? [
        {
          name: '',
          x: envelope.x,
          lower: differencesFrom(titration, envelope.x, envelope.lower),
          upper: differencesFrom(titration, envelope.x, envelope.upper),
        },
      ]
    : [];
  const all = [...differences, ...areas.flatMap(({ lower, upper }) => [...lower, ...upper])].map(Math.abs);
  const most = Math.max(...all) || 0.01;
  return plainPanel(roundAxis(words.residual, [-most, most]), {
    share: 0.5,
    areas,
    dots: [{ points: pointsOf(mL, differences), name: '', stemsFrom: 0, isReading: true }],
    rules: equivalenceVolumes(titration, upTo),
  });
}

function describeDifferences(
  mL: readonly number[],
  differences: readonly number[],
  upTo: number,
  words: PlotWords,
): string {
  const largest = farthestFromZero(differences);
  return say(words.describeResiduals, {
    count: differences.length,
    pH: printPH(differences[largest] as number),
    mL: printVolume(mL[largest] as number, upTo),
  });
}
