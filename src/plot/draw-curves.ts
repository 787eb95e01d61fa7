import { Faults } from '../input/faults.js';
import { readFlag } from '../input/read-flag.js';
import { makeTitration } from '../titration/make-titration.js';
import type { Titration } from '../titration/titration.js';
import { roundAxis } from './axis.js';
import { describeTitration } from './describe-titration.js';
import { drawnCurve, pointsOf } from './drawn-curve.js';
import type { Panel, PlotLine } from './figure.js';
import { inkOf } from './inks.js';
import { layOut } from './lay-out.js';
import type { Picture } from './picture.js';
import { plainPanel } from './plain-panel.js';
import { type PlotOptions, plotLimits, readPlotOptions } from './plot-options.js';
import { readDrawnSetup, readUpTo, usualUpTo } from './read-drawn.js';
import { type PlotWords, say } from './words.js';

/** A titration and what its curve is called. */
export interface NamedTitration {
  readonly name: string;
  readonly titration: Pick<Titration, 'setup'>;
}

/** What a picture of several curves shows beside them. */
export interface CurvesPicture extends PlotOptions {
  /** mL; as far as the longest of the titrations is usually carried, if left out. */
  readonly upTo?: number;
  /** A panel for the difference in pH of each from the first. */
  readonly differences?: boolean;
}

/**
 * Several titration curves over one axis, each with its name beside it: models, concentrations, waters.
 *
 * @param titrations - 1 to 6; the first is the one that the differences start from
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { compareModels, davies, makeSolution, reagents, titrate } from 'protolysis';
 * import { drawCurves } from 'protolysis/plot';
 *
 * const ideal = titrate({
 *   analyte: makeSolution({ mL: 20, contents: [{ reagent: reagents.sodiumCarbonate, molar: 0.05 }] }),
 *   titrant: makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] }),
 * });
 * const real = titrate({ ...ideal.setup, conditions: { activity: davies } });
 * const picture = drawCurves(
 *   [
 *     { name: 'ideal', titration: ideal },
 *     { name: 'Davies', titration: real },
 *   ],
 *   { differences: true },
 * );
 * picture.title; // => 'Titration curves compared'
 * ```
 */
export function drawCurves(titrations: readonly NamedTitration[], options?: CurvesPicture): Picture {
  const faults = new Faults('drawCurves');
  const read = faults
    .list(titrations, 'titrations', 'a list of named titrations', 1, plotLimits.curves)
    .map((one, k) => readNamed(one, `titrations[${k}]`, faults));
  const { width, title, words, unread } = readPlotOptions(options, ['upTo', 'differences'], faults);
  const upToGiven = readUpTo(unread.upTo, faults);
  const withDifferences = readFlag(unread.differences, 'options.differences', faults);
  faults.done();

  const drawn = read.map(({ name, setup }) => ({ name, titration: makeTitration(setup) }));
  const upTo = upToGiven ?? Math.max(...drawn.map(({ titration }) => usualUpTo(titration)));
  const lines = drawn.map(({ name, titration }, k): PlotLine => {
    const { mL, pH } = drawnCurve(titration, upTo);
    return { points: pointsOf(mL, pH), stroke: inkOf(k), name };
  });
  return layOut(
    {
      title: title ?? words.comparison,
      description: drawn
        .map(({ name, titration }) => `${name}: ${describeTitration(titration, upTo, words).join(' ')}`)
        .join(' '),
      x: { name: words.added, from: 0, to: upTo },
      rows: [
        plainPanel(roundAxis(words.pH, yOf(lines)), { lines }),
        ...(withDifferences ? [differencesPanel(drawn, lines, words)] : []),
      ],
      notes: [],
      noRoom: words.noRoom,
    },
    width,
  );
}

/** A titration that has been set up, and its name. */
interface NamedCurve {
  readonly name: string;
  readonly titration: Titration;
}

function readNamed(value: unknown, path: string, faults: Faults) {
  const unread = faults.object(value, path, 'a named titration { name, titration }', ['name', 'titration']);
  return {
    name: faults.text(unread.name, `${path}.name`, 'a name', 60),
    setup: readDrawnSetup(unread.titration, `${path}.titration`, faults),
  };
}

const yOf = (lines: readonly PlotLine[]): number[] => lines.flatMap(({ points }) => points.map(({ y }) => y));

/** pH of each titration less that of the first, at the volumes at which either was drawn. */
function differencesPanel(drawn: readonly NamedCurve[], lines: readonly PlotLine[], words: PlotWords): Panel {
  const [first] = drawn as readonly [NamedCurve];
  const volumesOf = (k: number) => (lines[k] as PlotLine).points.map(({ x }) => x);
  const differences = drawn.map(({ name, titration }, k): PlotLine => {
    const volumes = [...new Set([...volumesOf(0), ...volumesOf(k)])].sort((a, b) => a - b);
    const from = first.titration.pHs(volumes);
    const values = Array.from(titration.pHs(volumes), (pH, at) => pH - (from[at] as number));
    return { points: pointsOf(volumes, values), stroke: inkOf(k), name: k === 0 ? '' : name };
  });
  return plainPanel(roundAxis(say(words.difference, { name: first.name }), [...yOf(differences), 0]), {
    share: 0.6,
    lines: differences,
  });
}
