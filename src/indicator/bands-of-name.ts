import type { Faults } from '../input/faults.js';
import { type Band, colourless } from '../substance/indicator.js';

/**
 * The band that a colour of this name absorbs from white light. For two names, such as blue-violet, it lies midway.
 *
 * @internal
 */
export function bandsOfName(colour: string, path: string, faults: Faults): readonly Band[] {
  if (colour === colourless) return [];
  const known = colour
    .split('-')
    .map((word) => (Object.hasOwn(complements, word) ? complements[word] : undefined));
  if (known.includes(undefined)) {
    const names = Object.keys(complements).join(', ');
    faults.add(
      'missing',
      path,
      `bands, or a colour among colourless, ${names}, or two of them with a hyphen`,
      colour,
    );
    return [];
  }
  const nm = (known as number[]).reduce((sum, one) => sum + one, 0) / known.length;
  return [{ nm, width: 110, absorbance: 1.3 }];
}

/**
 * Which wavelength (nm) a colour absorbs: the middle of its complement's part of the spectrum, by the colour wheel of
 * textbooks (P. Flowers et al., Chemistry 2e, OpenStax, section 19.3), from memory.
 */
const complements: Readonly<Record<string, number>> = {
  yellow: 435,
  orange: 475,
  brown: 460,
  red: 495,
  pink: 545,
  purple: 560,
  violet: 575,
  blue: 605,
};
