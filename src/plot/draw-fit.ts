import { Faults } from '../input/faults.js';
import { distortionsAt, undistorted } from '../measurement/fit/distortion.js';
import { fitParameters } from '../measurement/fit/fit-parameters.js';
import { isOfBench } from '../measurement/fit/free-parameter.js';
import type { TitrationFit } from '../measurement/fit/titration-fit.js';
import { makeTitration } from '../titration/make-titration.js';
import { roundAxis } from './axis.js';
import { describeTitration } from './describe-titration.js';
import { drawnCurve, equivalenceVolumes, pointsOf } from './drawn-curve.js';
import { farthestFromZero } from './farthest-from-zero.js';
import { fitBand } from './fit-band.js';
import { layOut } from './lay-out.js';
import { namesOf } from './names-of.js';
import { pHPanel } from './ph-panel.js';
import type { Picture } from './picture.js';
import { plainPanel } from './plain-panel.js';
import { type PlotOptions, readPlotOptions } from './plot-options.js';
import { printHundredths, printVolume } from './print-quantity.js';
import { usualUpTo } from './read-drawn.js';
import { type ReadFit, readFit } from './read-fit.js';
import { type PlotWords, say } from './words.js';

/**
 * The readings of a fit over the fitted curve, with the area of 95 % confidence about it; below, how far each reading
 * lies from the curve, in its standard uncertainties, as `fit.fitted.distance` has it.
 *
 * The readings are drawn without what the fit found of faults of the probe and the burette, so that they stand beside the
 * curve of the flask's contents. The area is what the covariance of the fit leaves to the curve, at each volume by
 * itself: it is about the curve, not about single readings, and knows of no fault that was not fitted. There is none where
 * the readings do not determine a parameter or it stands at the end of its range; a line under the picture says so.
 *
 * Source: linear propagation, JCGM 100:2008 (GUM), eq. 13, with Student's t; in the steps along the curves themselves.
 *
 * @param fit - as `fitTitration` returns it
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { makeSolution, reagents, titrate } from 'protolysis';
 * import { fitTitration } from 'protolysis/measurement';
 * import { drawFit } from 'protolysis/plot';
 *
 * const titration = titrate({
 *   analyte: makeSolution({ mL: 25, contents: [{ reagent: reagents.aceticAcid, molar: 0.1 }] }),
 *   titrant: makeSolution({ contents: [{ reagent: reagents.sodiumHydroxide, molar: 0.1 }] }),
 * });
 * const mL = [2, 5, 10, 15, 20, 22, 23, 24, 25, 26, 28];
 * const pH = [3.74, 4.19, 4.61, 4.97, 5.45, 5.79, 6.06, 6.65, 11.02, 11.44, 11.81];
 * const fit = fitTitration({ mL, pH, notes: [] }, { titration, free: ['sampleAmount'] });
 * drawFit(fit).description.includes('11 readings; the largest distance from the curve is'); // => true
 * ```
 */
export function drawFit(
  fit: Pick<TitrationFit, 'setup' | 'parameters' | 'correlation' | 'fitted'>,
  options?: PlotOptions,
): Picture {
  const faults = new Faults('drawFit');
  const read = readFit(fit, faults);
  const { width, title, words } = readPlotOptions(options, [], faults);
  faults.done();

  const drawn = makeTitration(read.setup);
  const { mL, pH, note } = withoutBench(read, words, faults);
  const [from, last] = [Math.min(0, ...mL), Math.max(...mL)];
  const upTo = last > 0 ? last : usualUpTo(drawn);
  const curve = drawnCurve(drawn, upTo);
  const band = fitBand(read, curve.mL, words, faults);
  return layOut(
    {
      title: title ?? say(words.titration, namesOf(drawn.setup)),
      description: [
        ...describeTitration(drawn, upTo, words),
        describeDistances(mL, read.distance, upTo, words),
        band.note,
      ].join(' '),
      x: { name: words.added, from, to: upTo },
      rows: [
        pHPanel(drawn, curve, words, {
          areas: band.area ? [band.area] : [],
          dots: [{ points: pointsOf(mL, pH), name: words.readings, isReading: true }],
          name: words.fitted,
        }),
        plainPanel(roundAxis(words.distance, evenly(read.distance)), {
          share: 0.5,
          dots: [{ points: pointsOf(mL, read.distance), name: '', stemsFrom: 0, isReading: true }],
          rules: equivalenceVolumes(drawn, upTo),
        }),
      ],
      notes: [band.note, ...note],
      noRoom: words.noRoom,
    },
    width,
  );
}

/** The readings as a sound bench would have given them, and a line that names what was taken off. */
function withoutBench({ setup, parameters, readings }: ReadFit, words: PlotWords, faults: Faults) {
  const ofBench = parameters.filter(({ free }) => isOfBench(free));
  const moved = fitParameters(
    ofBench.map(({ free }) => free),
    setup,
    'fit.parameters',
    faults,
  );
  for (const [k, { from, to, name }] of moved.entries())
    faults.number(ofBench[k]?.value, 'fit.parameters', name, { from, to });
  faults.done();
  const distortions = distortionsAt(
    moved,
    readings,
    ofBench.map(({ value }) => value),
  );
  const names = ofBench.map(({ name }) => name).join(', ');
  return {
    ...undistorted(readings, distortions),
    note: names === '' ? [] : [say(words.withoutBench, { parameters: names })],
  };
}

/** As far below zero as above it. */
function evenly(values: readonly number[]): readonly number[] {
  const most = Math.max(...values.map(Math.abs)) || 1;
  return [-most, most];
}

function describeDistances(
  mL: readonly number[],
  distance: readonly number[],
  upTo: number,
  words: PlotWords,
): string {
  const largest = farthestFromZero(distance);
  return say(words.describeDistances, {
    count: distance.length,
    distance: printHundredths(distance[largest] as number),
    mL: printVolume(mL[largest] as number, upTo),
  });
}
