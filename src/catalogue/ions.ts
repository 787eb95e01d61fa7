import type { Ion } from '../substance/reagent.js';

// The ions of the catalogue that take no part in any proton transfer.

export const lithium: Ion = { formula: 'Li+', charge: 1 };
export const sodium: Ion = { formula: 'Na+', charge: 1 };
export const potassium: Ion = { formula: 'K+', charge: 1 };
export const calcium: Ion = { formula: 'Ca(2+)', charge: 2 };
export const barium: Ion = { formula: 'Ba(2+)', charge: 2 };
export const chloride: Ion = { formula: 'Cl-', charge: -1 };
export const bromide: Ion = { formula: 'Br-', charge: -1 };
export const nitrate: Ion = { formula: 'NO3-', charge: -1 };
export const perchlorate: Ion = { formula: 'ClO4-', charge: -1 };
