/**
 * What the functions on buffers take for granted.
 *
 * `dropSize`, mL: about what a burette or dropping pipette gives (common practice). `usefulShare`: the share of the peak
 * capacity down to which a buffer counts as useful; 40/121 is what a pair has left one pH unit from its pKa, so that the
 * trade's "pKa ± 1" comes out for a single pair. `change`: one pH unit. `errorPercent`: of a mass or volume.
 * `dilutions`: how many times the volume.
 */
export const bufferDefaults = {
  molar: 0.1,
  dropSize: 0.05,
  usefulShare: 40 / 121,
  change: 1,
  errorPercent: 1,
  dilutions: [2, 10],
} as const;

/**
 * A target pH from −2 to 16: no aqueous solution within the other limits lies beyond. `molar`: more than any stock of a
 * bottle holds; `times`: a dilution.
 */
export const bufferLimits = { pH: [-2, 16], molar: 20, drops: 1e5, times: 1e6 } as const;
