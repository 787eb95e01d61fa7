import { Faults } from '../input/faults.js';
import type { Protolyte } from '../substance/protolyte.js';
import { readProtolyte } from '../substance/read-protolyte.js';
import { makeTitration } from '../titration/make-titration.js';
import { equalAdditions } from '../titration/sampling/curve.js';
import type { Titration } from '../titration/titration.js';
import { equivalenceVolumes } from './drawn-curve.js';
import type { PlotLine } from './figure.js';
import { describeFraction, fractionAxis, fractionLine } from './fraction-line.js';
import { layOut } from './lay-out.js';
import { namesOf } from './names-of.js';
import type { Picture } from './picture.js';
import { plainPanel } from './plain-panel.js';
import { type PlotOptions, readPlotOptions } from './plot-options.js';
import { printVolume } from './print-quantity.js';
import { readDrawnSetup, readUpTo, usualUpTo } from './read-drawn.js';
import { say } from './words.js';

/** How far the species along a titration are drawn. */
export interface SpeciesAlongPicture extends PlotOptions {
  /** mL; as far as a titration is usually carried if left out. */
  readonly upTo?: number;
}

/**
 * The fraction of each species of a protolyte along a titration, under its conditions, with a line at each equivalence
 * point.
 *
 * @param titration - as `titrate` returns it
 * @param protolyte - one that the analyte or the titrant holds
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { acids, makeSolution, reagents, titrate } from 'protolysis';
 * import { drawSpeciesAlong } from 'protolysis/plot';
 *
 * const titration = titrate({
 *   analyte: makeSolution({ mL: 25, contents: [{ reagent: reagents.sodiumCarbonate, molar: 0.1 }] }),
 *   titrant: makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] }),
 * });
 * const { description } = drawSpeciesAlong(titration, acids.carbonic);
 * description.includes('HCO₃⁻: largest fraction 0.98 at 25.00 mL.'); // => true
 * ```
 */
export function drawSpeciesAlong(
  titration: Pick<Titration, 'setup'>,
  protolyte: Protolyte,
  options?: SpeciesAlongPicture,
): Picture {
  const faults = new Faults('drawSpeciesAlong');
  const setup = readDrawnSetup(titration, 'titration', faults);
  const read = readProtolyte(protolyte, 'protolyte', faults);
  const { width, title, words, unread } = readPlotOptions(options, ['upTo'], faults);
  const upToGiven = readUpTo(unread.upTo, faults);
  if (!faults.any && !isIn(setup, read.id))
    faults.add('unknown-substance', 'protolyte', 'one that the analyte or the titrant holds', protolyte);
  faults.done();

  const drawn = makeTitration(setup);
  const upTo = upToGiven ?? usualUpTo(drawn);
  const lines = linesOf(drawn, read, upTo);
  const sayAt = (mL: number) => say(words.plainVolume, { mL: printVolume(mL, upTo) });
  return layOut(
    {
      title: title ?? say(words.speciesAlong, { protolyte: read.name, ...namesOf(drawn.setup) }),
      description: lines.map((line) => describeFraction(line, sayAt, words)).join(' '),
      x: { name: words.added, from: 0, to: upTo },
      rows: [plainPanel(fractionAxis(words.fraction), { lines, rules: equivalenceVolumes(drawn, upTo) })],
      notes: [],
      noRoom: words.noRoom,
    },
    width,
  );
}

/** A gas from the air is there too, where the conditions name its protolyte. */
const isIn = ({ analyte, titrant, inUse }: ReturnType<typeof readDrawnSetup>, id: string): boolean =>
  [analyte, titrant].some(({ contents }) =>
    contents.some(({ reagent }) => reagent.protolytes.some(({ protolyte }) => protolyte.id === id)),
  ) || inUse.carbonDioxide?.protolyte?.id === id;

/** Where the protolyte is not there yet, as before the first drop of a titrant that brings it, nothing is drawn. */
function linesOf(titration: Titration, { id, species }: Protolyte, upTo: number): PlotLine[] {
  const steep = titration.curve({ maxStep: 0.1, upTo }).mL;
  const volumes = [
    ...new Set([...steep, ...equalAdditions(upTo / 100, upTo), ...equivalenceVolumes(titration, upTo), upTo]),
  ];
  const points = volumes
    .sort((a, b) => a - b)
    .map((mL) => ({
      mL,
      forms: titration.equilibriumAt(mL).species.filter(({ protolyteId }) => protolyteId === id),
    }))
    .filter(({ forms }) => forms.length > 0);
  return species.map(({ formula }, k) =>
    fractionLine(
      formula,
      k,
      points.map(({ mL }) => mL),
      points.map(({ forms }) => forms[k]?.fraction ?? 0),
    ),
  );
}
