import { frozen } from '../frozen.js';
import type { Source } from '../source.js';

/**
 * Standard atomic weights of 2021, dimensionless (so g/mol for a mole of atoms): the abridged value where the standard
 * is an interval, since the element varies in nature, and the full one elsewhere.
 */
export const atomicWeights = /*#__PURE__*/ frozen({
  H: 1.008,
  Li: 6.94,
  B: 10.81,
  C: 12.011,
  N: 14.007,
  O: 15.999,
  F: 18.998403162,
  Na: 22.98976928,
  Mg: 24.305,
  Al: 26.9815384,
  Si: 28.085,
  P: 30.973761998,
  S: 32.06,
  Cl: 35.45,
  K: 39.0983,
  Ca: 40.078,
  Cr: 51.9961,
  Mn: 54.938043,
  Fe: 55.845,
  Co: 58.933194,
  Ni: 58.6934,
  Cu: 63.546,
  Zn: 65.38,
  As: 74.921595,
  Se: 78.971,
  Br: 79.904,
  Rb: 85.4678,
  Sr: 87.62,
  Mo: 95.95,
  Ag: 107.8682,
  Cd: 112.414,
  Sn: 118.71,
  I: 126.90447,
  Cs: 132.90545196,
  Ba: 137.327,
  Hg: 200.592,
  Pb: 207.2,
} as const);

export type Element = keyof typeof atomicWeights;

/** Molar mass of water by these weights, g/mol. @internal */
export const waterMass = 18.015;

export const atomicWeightsSource: Source = /*#__PURE__*/ frozen({
  kind: 'published',
  work: 'prohaska-2022',
  where: 'standard atomic weights 2021; abridged values for the elements given as an interval',
  checked: 'CIAAW table of 2021; the abridged values agree with its intervals, but are from memory',
});

/**
 * Quoted from memory: the abridged values, which agree with the intervals that were read in that table, and caesium,
 * barium, mercury and lead, which were not.
 */
export const atomicWeightsFromMemory: readonly Element[] = /*#__PURE__*/ frozen([
  'H',
  'Li',
  'B',
  'C',
  'N',
  'O',
  'Mg',
  'Si',
  'S',
  'Cl',
  'Br',
  'Cs',
  'Ba',
  'Hg',
  'Pb',
]);
