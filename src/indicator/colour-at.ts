import type { PH } from '../equilibrium/quantities.js';
import { frozen } from '../frozen.js';
import { Faults } from '../input/faults.js';
import type { Band, Indicator } from '../substance/indicator.js';
import { readIndicator } from '../substance/read-indicator.js';
import { titrationLimits } from '../titration/titration-limits.js';
import { bandsOfName } from './bands-of-name.js';
import { type Channels, hexOf, transmitted } from './colour-channels.js';
import { colourName } from './colour-name.js';
import { indicatorDefaults, readDrops } from './score-options.js';

/** A predicted colour. */
export interface Colour {
  /** sRGB, such as `#f4d13a`. */
  readonly hex: string;
  /** In plain words. */
  readonly name: string;
  /** In each of three channels of light; 0 for pure water. */
  readonly absorbances: Channels;
  /** The label of every predicted colour: {@link colourLabel}. */
  readonly label: string;
}

/** The label of every predicted colour. */
export const colourLabel =
  'approximate: predicted from absorption bands in three channels of light; the dye, its amount, the lamp and the screen all change it';

/**
 * The colour of a flask with an indicator at a pH, as an approximation.
 *
 *   A = (drops/2) · ((1 − α)·A_acid + α·A_base),   α = 1/(1 + 10^(pKIn − pH)),   light = 10^−A            (1)
 *
 * in each of three channels, red, green and blue: absorbances add, so yellow and blue make green, which an average of
 * colours would not. The absorbances of each form come from its bands through the CIE 1931 observer; without bands,
 * from the colour's name by the rule of complementary colours; those of a mixture from its parts. Two drops are the
 * usual amount in about 50 mL of water (common practice). pKIn, if unknown, is taken midway.
 *
 * @param options - `drops` of indicator solution in the flask; 2 if left out
 * @throws InputError that lists every fault; also where a colour is neither given by bands nor by a known name
 * @example
 * ```ts
 * import { colourAt, indicators } from 'protolysis';
 *
 * [5, 7, 9].map((pH) => colourAt(indicators.bromothymolBlue, pH).name); // => ['yellow', 'green', 'blue']
 * colourAt(indicators.phenolphthalein, 7).name; // => 'colourless'
 * colourAt(indicators.phenolphthalein, 8.3).name; // => 'faint pink'
 * ```
 */
export function colourAt(indicator: Indicator, pH: PH, options?: { readonly drops?: number }): Colour {
  const faults = new Faults('colourAt');
  const read = readDye(indicator, 'indicator', faults);
  const checked = faults.number(pH, 'pH', 'a pH', titrationLimits.pH);
  const unread =
    options === undefined ? {} : faults.object(options, 'options', 'options { drops }', ['drops']);
  const drops = readDrops(unread.drops, 'drops', faults);
  faults.done();
  return frozen(colourOf(read, checked, drops));
}

/** An indicator ready for colours: the absorbances of each form in three channels, for each of its parts. @internal */
export interface Dye {
  readonly indicator: Indicator;
  readonly parts: readonly { readonly pKIn: PH; readonly acid: Channels; readonly base: Channels }[];
}

/** The colour at a pH: (1). @internal */
export function colourOf({ parts }: Dye, pH: PH, drops: number): Colour {
  const amount = drops / indicatorDefaults.indicatorDrops;
  const absorbances = mapChannels((channel) =>
    parts.reduce((all, { pKIn, acid, base }) => {
      const share = 1 / (1 + 10 ** (pKIn - pH));
      return all + amount * ((1 - share) * acid[channel] + share * base[channel]);
    }, 0),
  );
  const hex = hexOf(mapChannels((channel) => 10 ** -absorbances[channel]));
  return { hex, name: colourName(hex), absorbances, label: colourLabel };
}

const mapChannels = (value: (channel: keyof Channels) => number): Channels => ({
  red: value('red'),
  green: value('green'),
  blue: value('blue'),
});

/** Reads an indicator whose colour is wanted, noting every fault. @internal */
export function readDye(value: unknown, path: string, faults: Faults): Dye {
  const before = faults.count;
  const indicator = readIndicator(value, path, faults);
  if (faults.count > before) return { indicator, parts: [] };
  const parts = indicator.parts?.map(({ indicator: part, amount }, k) =>
    partOf(part, amount, `${path}.parts[${k}].indicator`, faults),
  );
  return { indicator, parts: parts ?? [partOf(indicator, 1, path, faults)] };
}

function partOf(indicator: Indicator, amount: number, path: string, faults: Faults): Dye['parts'][number] {
  const {
    transition,
    pKIn = (transition.from + transition.to) / 2,
    bands,
    acidColour,
    baseColour,
  } = indicator;
  const acid = bands?.acid ?? bandsOfName(acidColour, `${path}.acidColour`, faults);
  const base = bands?.base ?? bandsOfName(baseColour, `${path}.baseColour`, faults);
  return { pKIn, acid: absorbancesOf(acid, amount), base: absorbancesOf(base, amount) };
}

/** Absorbances in three channels, from 0 (all light is let through) to 2 (nearly none). */
function absorbancesOf(bands: readonly Band[], amount: number): Channels {
  const light = transmitted(bands);
  return mapChannels((channel) => amount * -Math.log10(Math.min(Math.max(light[channel], 0.01), 1)));
}
