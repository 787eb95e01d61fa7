import { frozen } from '../frozen.js';
import type { Ion } from '../substance/reagent.js';

// The ions of the catalogue that take no part in any proton transfer.

export const lithium: Ion = /*#__PURE__*/ frozen({ formula: 'Li+', charge: 1 });
export const sodium: Ion = /*#__PURE__*/ frozen({ formula: 'Na+', charge: 1 });
export const potassium: Ion = /*#__PURE__*/ frozen({ formula: 'K+', charge: 1 });
export const calcium: Ion = /*#__PURE__*/ frozen({ formula: 'Ca(2+)', charge: 2 });
export const barium: Ion = /*#__PURE__*/ frozen({ formula: 'Ba(2+)', charge: 2 });
export const chloride: Ion = /*#__PURE__*/ frozen({ formula: 'Cl-', charge: -1 });
export const bromide: Ion = /*#__PURE__*/ frozen({ formula: 'Br-', charge: -1 });
export const nitrate: Ion = /*#__PURE__*/ frozen({ formula: 'NO3-', charge: -1 });
export const perchlorate: Ion = /*#__PURE__*/ frozen({ formula: 'ClO4-', charge: -1 });
