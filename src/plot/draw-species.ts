import { conditionDefaults } from '../equilibrium/conditions.js';
import { familyOf, fractionsOf } from '../equilibrium/family.js';
import type { PH } from '../equilibrium/quantities.js';
import { stepAt } from '../equilibrium/temperature/pka-at.js';
import { readCelsius } from '../equilibrium/temperature/read-celsius.js';
import { Faults } from '../input/faults.js';
import type { Protolyte } from '../substance/protolyte.js';
import { readProtolyte } from '../substance/read-protolyte.js';
import { titrationLimits } from '../titration/titration-limits.js';
import type { Mark } from './figure.js';
import { describeFraction, fractionAxis, fractionLine } from './fraction-line.js';
import { layOut } from './lay-out.js';
import type { Picture } from './picture.js';
import { plainPanel } from './plain-panel.js';
import { type PlotOptions, readPlotOptions } from './plot-options.js';
import { printPH } from './print-quantity.js';
import { type PlotWords, say } from './words.js';

/** Over which pH the species of a protolyte are drawn, and for which temperature. */
export interface SpeciesPicture extends PlotOptions {
  /** 0 if left out. */
  readonly from?: PH;
  /** 14 if left out. */
  readonly to?: PH;
  /** Temperature, °C; 25 if left out. */
  readonly celsius?: number;
}

/**
 * The fraction of each species of a protolyte against pH, with a mark at each pKa, where two neighbours are alike.
 *
 *   α_j = [species j] / Σ [species],   [species j] / [species j−1] = K_j / h
 *
 * with the constants at zero ionic strength: for a real solution see {@link drawSpeciesAlong}.
 *
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { acids } from 'protolysis';
 * import { drawSpecies } from 'protolysis/plot';
 *
 * const { title, description } = drawSpecies(acids.carbonic);
 * title; // => 'Species of carbonic acid against pH'
 * description.includes('HCO₃⁻: largest fraction 0.98 at pH 8.34.'); // => true
 * ```
 */
export function drawSpecies(protolyte: Protolyte, options?: SpeciesPicture): Picture {
  const faults = new Faults('drawSpecies');
  const read = readProtolyte(protolyte, 'protolyte', faults);
  const { width, title, words, unread } = readPlotOptions(options, ['from', 'to', 'celsius'], faults);
  const end = (key: 'from' | 'to', usual: PH): PH =>
    faults.number(unread[key] ?? usual, `options.${key}`, 'a pH', titrationLimits.pH);
  const [from, to] = [end('from', 0), end('to', 14)];
  const celsius =
    unread.celsius === undefined
      ? conditionDefaults.celsius
      : readCelsius(unread.celsius, 'options.celsius', faults);
  if (!faults.any && !(to - from >= 0.1))
    faults.add('conflict', 'options.to', `a pH at least 0.1 above options.from, ${from}`, to);
  faults.done();

  const steps = read.steps.map((step) => ({ ...step, pKa: stepAt(step, celsius) }));
  const family = familyOf({ ...read, steps });
  const at = (pH: PH) => fractionsOf(family, 10 ** -pH);
  const pHs = drawnPHs(
    steps.map(({ pKa }) => pKa),
    from,
    to,
  );
  const lines = read.species.map(({ formula }, k) =>
    fractionLine(
      formula,
      k,
      pHs,
      pHs.map((pH) => at(pH)[k] as number),
    ),
  );
  const marks = steps.flatMap(({ pKa }, k) =>
    pKa >= from && pKa <= to ? [pKaMark(pKa, at(pKa)[k] as number, words)] : [],
  );
  return layOut(
    {
      title: title ?? say(words.species, { protolyte: read.name }),
      description: lines
        .map((line) => describeFraction(line, (pH) => say(words.plainPH, { pH: printPH(pH) }), words))
        .join(' '),
      x: { name: words.pH, from, to },
      rows: [plainPanel(fractionAxis(words.fraction), { lines, marks })],
      notes: [],
      noRoom: words.noRoom,
    },
    width,
  );
}

/** Close enough for the eye; and half-way between neighbouring pKa values, where the species between them is at its most. */
function drawnPHs(pKas: readonly number[], from: PH, to: PH): PH[] {
  const even = Array.from({ length: 401 }, (_, k) => from + ((to - from) * k) / 400);
  const between = pKas.slice(1).map((pKa, k) => (pKa + (pKas[k] as number)) / 2);
  const inside = between.filter((pH) => pH > from && pH < to);
  return [...new Set([...even, ...inside])].sort((a, b) => a - b);
}

const pKaMark = (pKa: number, fraction: number, words: PlotWords): Mark => ({
  at: { x: pKa, y: fraction },
  lines: [say(words.pKa, { pKa: printPH(pKa) })],
  short: [printPH(pKa)],
  key: words.keyToPKa,
  shape: 'ring',
  hasRule: false,
});
