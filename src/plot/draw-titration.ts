import { type Dye, readDye } from '../indicator/colour-at.js';
import { Faults } from '../input/faults.js';
import { readFlag } from '../input/read-flag.js';
import type { Indicator } from '../substance/indicator.js';
import { makeTitration } from '../titration/make-titration.js';
import type { Curve } from '../titration/sampling/curve.js';
import type { Titration } from '../titration/titration.js';
import { roundAxis } from './axis.js';
import { describeTitration } from './describe-titration.js';
import { type DrawnAdditions, dotsAt, readDrawnAdditions } from './drawn-additions.js';
import { drawnCurve, equivalenceVolumes, pointsOf } from './drawn-curve.js';
import type { Panel, Strip } from './figure.js';
import { indicatorStrip } from './indicator-strip.js';
import { inkOf } from './inks.js';
import { layOut } from './lay-out.js';
import { namesOf } from './names-of.js';
import { pHPanel } from './ph-panel.js';
import type { Picture } from './picture.js';
import { plainPanel } from './plain-panel.js';
import { type PlotOptions, plotLimits, readPlotOptions } from './plot-options.js';
import { readDrawnSetup, readUpTo, usualUpTo } from './read-drawn.js';
import { type Envelope, readEnvelope } from './read-envelope.js';
import { type PlotWords, say } from './words.js';

/** What a picture of a titration shows beside the curve and its points. */
export interface TitrationPicture extends PlotOptions {
  /** mL; as far as a titration is usually carried, or as the additions go, if left out. */
  readonly upTo?: number;
  /** Each gets a strip under the curve with the colour of the flask at each volume. */
  readonly indicators?: readonly Indicator[];
  /** Dots on the curve: the pH after each addition. */
  readonly additions?: DrawnAdditions;
  /** A panel for the slope dpH/dV. */
  readonly slope?: boolean;
  /** An area about the curve, such as its uncertainty. */
  readonly envelope?: Envelope;
}

/**
 * The curve of a titration with its equivalence and half-equivalence points, each labelled where it stands; under it a
 * strip for each indicator, and the slope.
 *
 * A strip shows the colour of the flask at each volume, as `flaskColours` predicts it, with a bracket where pH passes
 * through the range of the indicator. A label that has no room in the picture is written under it.
 *
 * @param titration - as `titrate` returns it
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { indicators, makeSolution, reagents, titrate } from 'protolysis';
 * import { drawTitration } from 'protolysis/plot';
 *
 * const titration = titrate({
 *   analyte: makeSolution({ mL: 50, contents: [{ reagent: reagents.sodiumCarbonate, grams: 0.2, purity: 0.95 }] }),
 *   titrant: makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] }),
 * });
 * const { title, svg, description } = drawTitration(titration, { indicators: [indicators.methylOrange] });
 * title; // => 'sodium carbonate with hydrochloric acid'
 * svg.startsWith('<svg '); // => true
 * description.includes('Equivalence at 35.85 mL, pH 4.02'); // => true
 * ```
 */
export function drawTitration(titration: Pick<Titration, 'setup'>, options?: TitrationPicture): Picture {
  const faults = new Faults('drawTitration');
  const setup = readDrawnSetup(titration, 'titration', faults);
  const keys = ['upTo', 'indicators', 'additions', 'slope', 'envelope'];
  const { width, title, words, unread } = readPlotOptions(options, keys, faults);
  const upToGiven = readUpTo(unread.upTo, faults);
  const dyes = readDyes(unread.indicators, faults);
  const withSlope = readFlag(unread.slope, 'options.slope', faults);
  const envelope = readEnvelope(unread.envelope, upToGiven, faults);
  const added = readDrawnAdditions(unread.additions, upToGiven, faults);
  faults.done();

  const drawn = makeTitration(setup);
  const upTo = upToGiven ?? (Math.max(added?.at(-1) ?? 0, envelope?.x.at(-1) ?? 0) || usualUpTo(drawn));
  const curve = drawnCurve(drawn, upTo);
  const strips = dyes.map((dye) => indicatorStrip(drawn, dye, upTo, words));
  const dots = added ? [dotsAt(drawn, added)] : [];
  return layOut(
    {
      title: title ?? say(words.titration, namesOf(drawn.setup)),
      description: [...describeTitration(drawn, upTo, words), ...strips.map(describeStrip)].join(' '),
      x: { name: words.added, from: 0, to: upTo },
      rows: [
        pHPanel(drawn, curve, words, { areas: envelope ? [envelope] : [], dots }),
        ...strips,
        ...(withSlope ? [slopePanel(drawn, curve, upTo, words)] : []),
      ],
      notes: [
        ...(added ? [say(words.additions, { count: added.length })] : []),
        ...(strips.length > 0 ? [words.approximate] : []),
      ],
      noRoom: words.noRoom,
    },
    width,
  );
}

function readDyes(value: unknown, faults: Faults): readonly Dye[] {
  if (value === undefined) return [];
  return faults
    .list(value, 'options.indicators', 'a list of indicators', 0, plotLimits.indicators)
    .map((one, k) => readDye(one, `options.indicators[${k}]`, faults));
}

/** Half as high as the curve, with a line at each equivalence point. */
const slopePanel = (titration: Titration, { mL, slope }: Curve, upTo: number, words: PlotWords): Panel =>
  plainPanel(roundAxis(words.slope, [...slope, 0]), {
    share: 0.5,
    lines: [{ points: pointsOf(mL, slope), stroke: inkOf(0), name: '' }],
    rules: equivalenceVolumes(titration, upTo),
  });

const describeStrip = ({ caption, changes }: Strip): string =>
  `${[caption, ...changes.map(({ text }) => text)].join('; ')}.`;
