import { frozen } from '../../frozen.js';
import type { Source } from '../../source.js';

/** The ion product of water at 25 °C and 0.1 MPa. */
export const waterAt25: { readonly name: string; readonly pKw: number; readonly source: Source } =
  /*#__PURE__*/ frozen({
    name: 'ion product of water',
    pKw: 13.995,
    source: {
      kind: 'published',
      work: 'iapws-r11-07',
      where: 'equation at 298.15 K and 0.1 MPa, as printed in the CRC Handbook, Ionization Constant of Water',
    },
  });
