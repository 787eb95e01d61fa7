/** A volume of titrant from 0 to 1e9 mL; a curve of at most 1e7 points. */
export const titrationLimits = { mL: 1e9, points: 1e7 } as const;
