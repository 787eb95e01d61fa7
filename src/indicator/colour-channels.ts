import type { Band } from '../substance/indicator.js';

/** Three numbers, one for each channel of a screen. */
export interface Channels {
  readonly red: number;
  readonly green: number;
  readonly blue: number;
}

/**
 * The light that a solution with these absorption bands lets through, as linear sRGB, white light being (1, 1, 1).
 *
 *   A(λ) = Σ Aₖ·2^(−(2(λ − λₖ)/wₖ)²),   X = ∫ x̄(λ)·10^(−A(λ)) dλ, Y and Z alike                          (1)
 *
 * Light of equal energy at every wavelength; each channel is divided by what pure water would give. A channel below 0
 * or above 1 belongs to a colour that no screen shows, and stays as it is here.
 *
 * Source [1]  C. Wyman, P.-P. Sloan, P. Shirley, J. Comput. Graph. Tech. 2(2), 1–11 (2013): the CIE 1931
 *             colour-matching functions as sums of Gaussians, from memory; tested against the CIE's table, 0.015 off at
 *             most
 * Source [2]  IEC 61966-2-1:1999, from CIE XYZ to linear sRGB
 *
 * @internal
 */
export function transmitted(bands: readonly Band[]): Channels {
  const light = toLinear(tristimulus(bands));
  return {
    red: light.red / white.red,
    green: light.green / white.green,
    blue: light.blue / white.blue,
  };
}

/** Two half Gaussians that meet at μ: [1] eq. 2. */
const lobe = (nm: number, mu: number, below: number, above: number): number =>
  Math.exp(-0.5 * ((nm - mu) / (nm < mu ? below : above)) ** 2);

/** The CIE 1931 colour-matching functions: [1] eq. 4. @internal */
export function colourMatching(nm: number): { readonly x: number; readonly y: number; readonly z: number } {
  return {
    x:
      1.056 * lobe(nm, 599.8, 37.9, 31.0) +
      0.362 * lobe(nm, 442.0, 16.0, 26.7) -
      0.065 * lobe(nm, 501.1, 20.4, 26.2),
    y: 0.821 * lobe(nm, 568.8, 46.9, 40.5) + 0.286 * lobe(nm, 530.9, 16.3, 31.1),
    z: 1.217 * lobe(nm, 437.0, 11.8, 36.0) + 0.681 * lobe(nm, 459.0, 26.0, 13.8),
  };
}

/** (1), in steps of 5 nm from 380 to 780 nm. */
function tristimulus(bands: readonly Band[]) {
  let [x, y, z] = [0, 0, 0];
  for (let nm = 380; nm <= 780; nm += 5) {
    const absorbance = bands.reduce((all, band) => all + absorbanceOf(band, nm), 0);
    const light = 10 ** -absorbance;
    const seen = colourMatching(nm);
    x += light * seen.x;
    y += light * seen.y;
    z += light * seen.z;
  }
  return { x, y, z };
}

function absorbanceOf({ nm, width, absorbance }: Band, at: number): number {
  return absorbance * 2 ** -(((2 * (at - nm)) / width) ** 2);
}

/** [2] */
function toLinear({ x, y, z }: { readonly x: number; readonly y: number; readonly z: number }): Channels {
  return {
    red: 3.2406 * x - 1.5372 * y - 0.4986 * z,
    green: -0.9689 * x + 1.8758 * y + 0.0415 * z,
    blue: 0.0557 * x - 0.204 * y + 1.057 * z,
  };
}

const white = /*#__PURE__*/ toLinear(/*#__PURE__*/ tristimulus([]));

/**
 * Linear light in three channels as the six digits of a screen colour: [2]. Channels outside the range of a screen are
 * set to its ends.
 *
 * @internal
 */
export function hexOf({ red, green, blue }: Channels): string {
  const digits = [red, green, blue].map((light) => {
    const inside = Math.min(Math.max(light, 0), 1);
    const coded = inside <= 0.0031308 ? 12.92 * inside : 1.055 * inside ** (1 / 2.4) - 0.055;
    return Math.round(255 * coded)
      .toString(16)
      .padStart(2, '0');
  });
  return `#${digits.join('')}`;
}
