import { frozen } from '../frozen.js';
import type { Source } from '../source.js';

/** A measuring vessel: its volume and its limits of error at 20 °C, mL. */
export interface Vessel {
  readonly mL: number;
  /** Limits of error of classes A (or AS) and B. */
  readonly tolerance: { readonly A: number; readonly B: number };
  readonly source: Source;
}

const pipettesFromMemory: Source = {
  kind: 'fromMemory',
  work: 'iso-648',
  note: 'limits of error, not checked against the page',
};
const burettesFromMemory: Source = {
  kind: 'fromMemory',
  work: 'iso-385',
  note: 'limits of error, not checked against the page; a guide to the accuracy of burettes prints those of 50 mL',
};
const flasksFromMemory: Source = {
  kind: 'fromMemory',
  work: 'iso-1042',
  note: 'limits of error, not checked against the page',
};

/** Burettes; of 25 mL with a division of 0.1 mL, of 10 mL with one of 0.02 mL. */
export const burettes: readonly Vessel[] = /*#__PURE__*/ frozen([
  { mL: 10, tolerance: { A: 0.02, B: 0.05 }, source: burettesFromMemory },
  { mL: 25, tolerance: { A: 0.05, B: 0.1 }, source: burettesFromMemory },
  { mL: 50, tolerance: { A: 0.05, B: 0.1 }, source: burettesFromMemory },
  { mL: 100, tolerance: { A: 0.1, B: 0.2 }, source: burettesFromMemory },
]);

/** Pipettes with one mark. */
export const pipettes: readonly Vessel[] = /*#__PURE__*/ frozen([
  { mL: 0.5, tolerance: { A: 0.005, B: 0.01 }, source: pipettesFromMemory },
  { mL: 1, tolerance: { A: 0.008, B: 0.015 }, source: pipettesFromMemory },
  { mL: 2, tolerance: { A: 0.01, B: 0.02 }, source: pipettesFromMemory },
  { mL: 5, tolerance: { A: 0.015, B: 0.03 }, source: pipettesFromMemory },
  { mL: 10, tolerance: { A: 0.02, B: 0.04 }, source: pipettesFromMemory },
  { mL: 20, tolerance: { A: 0.03, B: 0.06 }, source: pipettesFromMemory },
  { mL: 25, tolerance: { A: 0.03, B: 0.06 }, source: pipettesFromMemory },
  { mL: 50, tolerance: { A: 0.05, B: 0.1 }, source: pipettesFromMemory },
  { mL: 100, tolerance: { A: 0.08, B: 0.15 }, source: pipettesFromMemory },
]);

/** Volumetric flasks. */
export const flasks: readonly Vessel[] = /*#__PURE__*/ frozen([
  { mL: 5, tolerance: { A: 0.025, B: 0.05 }, source: flasksFromMemory },
  { mL: 10, tolerance: { A: 0.025, B: 0.05 }, source: flasksFromMemory },
  { mL: 20, tolerance: { A: 0.04, B: 0.08 }, source: flasksFromMemory },
  { mL: 25, tolerance: { A: 0.04, B: 0.08 }, source: flasksFromMemory },
  { mL: 50, tolerance: { A: 0.06, B: 0.12 }, source: flasksFromMemory },
  { mL: 100, tolerance: { A: 0.1, B: 0.2 }, source: flasksFromMemory },
  { mL: 200, tolerance: { A: 0.15, B: 0.3 }, source: flasksFromMemory },
  { mL: 250, tolerance: { A: 0.15, B: 0.3 }, source: flasksFromMemory },
  { mL: 500, tolerance: { A: 0.25, B: 0.5 }, source: flasksFromMemory },
  { mL: 1000, tolerance: { A: 0.4, B: 0.8 }, source: flasksFromMemory },
  { mL: 2000, tolerance: { A: 0.6, B: 1.2 }, source: flasksFromMemory },
]);
