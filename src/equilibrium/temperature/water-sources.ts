import { frozen } from '../../frozen.js';
import type { Source } from '../../source.js';

/** Where the density and the permittivity of water come from, on which A and B of the Debye–Hückel laws rest. */
export const waterSources: {
  readonly name: string;
  readonly density: Source;
  readonly permittivity: Source;
} = /*#__PURE__*/ frozen({
  name: 'water',
  density: {
    kind: 'published',
    work: 'kell-1975',
    where: 'equation 16',
    checked:
      'F. E. Jones, G. L. Harris, J. Res. Natl. Inst. Stand. Technol. 97, 335 (1992), equation 1, whose denominator has two digits transposed',
  },
  permittivity: {
    kind: 'fromMemory',
    work: 'malmberg-maryott-1956',
    note: 'the coefficients; 78.30 at 25 °C stands in the abstract',
  },
});
