import {
  convertLrgbToRgb,
  convertRgbToLrgb,
  convertRgbToXyz65,
  convertXyz65ToLab65,
  differenceCiede2000,
  filterDeficiencyDeuter,
  filterDeficiencyProt,
  filterDeficiencyTrit,
  parseHex,
} from 'culori/fn';
import { frozen } from '../frozen.js';
import { Faults } from '../input/faults.js';

/** Normal colour vision, and its three kinds of deficiency at their full: no long-, middle- or short-wave cones. */
export type Vision = 'normal' | 'protanopia' | 'deuteranopia' | 'tritanopia';

/** The kinds of colour vision that are distinguished. */
export const visions = /*#__PURE__*/ frozen(['normal', 'protanopia', 'deuteranopia', 'tritanopia'] as const);

/** How far apart two colours are for each kind of vision, CIEDE2000. */
export type SeenDifference = Readonly<Record<Vision, number>>;

const filters = {
  protanopia: filterDeficiencyProt,
  deuteranopia: filterDeficiencyDeuter,
  tritanopia: filterDeficiencyTrit,
};

/**
 * How far apart two screen colours are, CIEDE2000: 0 for the same, about 1 or 2 where one just sees a difference side
 * by side, 100 from black to white.
 *
 * Deficiencies are simulated by the matrices of G. M. Machado, M. M. Oliveira, L. A. F. Fernandes, IEEE Trans. Vis.
 * Comput. Graph. 15, 1291–1298 (2009), doi:10.1109/TVCG.2009.113, which act on linear light. Difference: G. Sharma, W.
 * Wu, E. N. Dalal, Color Res. Appl. 30, 21–30 (2005), doi:10.1002/col.20070.
 *
 * @param first - sRGB, `#` and six digits
 * @param second - likewise
 * @param options - `vision`, `'normal'` if left out
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { colourDifference } from 'protolysis/colour';
 *
 * colourDifference('#000000', '#ffffff'); // => 100.0
 * const [red, green] = ['#e05030', '#80a030'];
 * colourDifference(red, green) > 2 * colourDifference(red, green, { vision: 'deuteranopia' }); // => true
 * ```
 */
export function colourDifference(
  first: string,
  second: string,
  options?: { readonly vision?: Vision },
): number {
  const faults = new Faults('colourDifference');
  for (const [path, hex] of Object.entries({ first, second })) readHex(hex, path, faults);
  const unread =
    options === undefined ? {} : faults.object(options, 'options', 'options { vision }', ['vision']);
  const vision = readVision(unread.vision, faults);
  faults.done();
  return differenceSeen(first, second, vision);
}

function readHex(value: unknown, path: string, faults: Faults): void {
  const what = "a colour such as '#f4d13a'";
  if (value === undefined) faults.add('missing', path, what, value);
  else if (typeof value !== 'string') faults.add('wrong-type', path, what, value);
  else if (!/^#[0-9a-f]{6}$/i.test(value)) faults.add('out-of-range', path, what, value);
}

/** Reads a kind of colour vision. @internal */
export function readVision(value: unknown, faults: Faults): Vision {
  if (value === undefined) return 'normal';
  const known = visions.find((vision) => vision === value);
  if (known === undefined) faults.add('wrong-type', 'vision', `one of ${visions.join(', ')}`, value);
  return known ?? 'normal';
}

/** How far apart two colours are for one kind of vision, CIEDE2000. @internal */
export function differenceSeen(first: string, second: string, vision: Vision): number {
  return differenceCiede2000()(seen(first, vision), seen(second, vision));
}

/** A colour as this kind of vision takes it, in CIE L*a*b*. */
function seen(hex: string, vision: Vision) {
  const colour = parseHex(hex);
  if (colour === undefined) throw new TypeError(`not a colour: ${hex}`); // every caller has checked it
  if (vision === 'normal') return convertXyz65ToLab65(convertRgbToXyz65(colour));
  // The filters multiply whatever components they are given; linear ones, as in the paper, go in as if they were coded.
  const filtered = filters[vision]()({ ...convertRgbToLrgb(colour), mode: 'rgb' });
  return convertXyz65ToLab65(convertRgbToXyz65(convertLrgbToRgb(filtered)));
}

/** The difference of two colours for each kind of vision. @internal */
export function differencesSeen(first: string, second: string): SeenDifference {
  return {
    normal: differenceSeen(first, second, 'normal'),
    protanopia: differenceSeen(first, second, 'protanopia'),
    deuteranopia: differenceSeen(first, second, 'deuteranopia'),
    tritanopia: differenceSeen(first, second, 'tritanopia'),
  };
}
