import { fourDigits, toDigits } from '../print-number.js';
import { fumes } from '../recipe/order-of-work.js';
import type { PouredPart } from '../recipe/recipe.js';
import { heatNotes, tooHot } from '../recipe/work-of.js';
import { type HeatOfMixing, heatLimits, heatOfMixing } from '../safety/heat-of-mixing.js';
import type { Reagent } from '../substance/reagent.js';
import type { Dilution } from './dilutions-to.js';

/** The share of a flask that water fills before anything goes in (common practice). */
const beginning = 1 / 3;

/**
 * The work at the bench for dilutions one after the other, with the heat of the hottest. Refused where that is too hot.
 *
 * @internal
 */
export function dilutionWork(part: PouredPart, dilutions: readonly Dilution[], reagent: Reagent) {
  const strength = part.stock.contents.reduce((sum, { mmol }) => sum + mmol, 0) / part.stock.mL;
  const heats = dilutions.map((dilution, k) =>
    heatOfDilution(dilution, reagent, dilutions[k - 1]?.molar ?? strength),
  );
  const heat = heats.reduce((hottest, one) => (one.kelvin > hottest.kelvin ? one : hottest));
  if (heat.kelvin >= heatLimits.refused) return tooHot([part], heat);
  return {
    status: 'planned' as const,
    heat,
    notes: heatNotes(heat),
    steps: dilutions.map((dilution, k) => stepOf(dilution, heats[k] ?? heat, k === 0 && fumes(part))),
  };
}

/** As an estimate, while the flask holds its first water and what was added. */
function heatOfDilution({ times, pipette, flask }: Dilution, reagent: Reagent, from: number): HeatOfMixing {
  const taken = times * pipette.mL;
  const contents = [{ reagent, mmol: from * taken }];
  return heatOfMixing(
    [{ contents, mL: taken, water: null }],
    { mL: flask.mL, contents },
    Math.min(flask.mL * beginning + taken, flask.mL),
  );
}

/**
 * A dilution in words: water first, then the stock. What gets hot is diluted in a beaker in ice water first: a flask is
 * calibrated at 20 °C, and heat strains it.
 */
function stepOf(
  { of, times, pipette, flask, glass, molar }: Dilution,
  heat: HeatOfMixing,
  isFuming: boolean,
): string {
  const often = times > 1 ? `${times} times ` : '';
  const put = isFuming ? 'In the fume cupboard, put' : 'Put';
  const water = Math.min(beginning, 1 - (times * pipette.mL) / flask.mL) * flask.mL;
  const about = `about ${toDigits(water, 2)} mL of water into`;
  const add = `add ${often}${pipette.mL} mL of ${of} slowly with a pipette (class ${glass}) and a filler`;
  const vessel = `a ${flask.mL} mL flask (class ${glass})`;
  const end = `make up to the mark with water and mix: ${fourDigits(molar)} mol/L.`;
  return heat.kelvin < heatLimits.cooled
    ? `${put} ${about} ${vessel}, ${add}, swirling, let it come to room temperature, ${end}`
    : `${put} ${about} a beaker in ice water, with a stirrer, ${add}, stirring, let it come to room temperature, transfer it to ${vessel}, rinse the beaker into it, ${end}`;
}
