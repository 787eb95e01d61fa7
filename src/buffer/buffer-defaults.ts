import { frozen } from '../frozen.js';

/**
 * Defaults of the functions on buffers.
 *
 * `dropSize`, mL: about what a burette or dropping pipette gives (common practice). `usefulShare`: the share of the
 * peak capacity down to which a buffer counts as useful; 40/121 is what a pair has left one pH unit from its pKa, so
 * that the trade's "pKa ± 1" comes out for a single pair. `change`: one pH unit. `errorPercent`: of a mass or volume.
 * `dilutions`: how many times the volume.
 */
export const bufferDefaults = /*#__PURE__*/ frozen({
  molar: 0.1,
  dropSize: 0.05,
  usefulShare: 40 / 121,
  change: 1,
  errorPercent: 1,
  dilutions: [2, 10],
} as const);

/**
 * What the functions on buffers accept. `pH`: no aqueous solution within the other limits lies beyond. `molar`: from
 * next to nothing to more than any stock of a bottle holds. `mL`: a final volume. `dropSize`, mL. `purity`, a mass
 * fraction. `times`: a dilution.
 */
export const bufferLimits = /*#__PURE__*/ frozen({
  pH: [-2, 16],
  molar: [1e-9, 20],
  mL: [1e-6, 1e8],
  dropSize: [1e-4, 10],
  drops: 1e5,
  purity: [1e-3, 1],
  times: 1e6,
} as const);
