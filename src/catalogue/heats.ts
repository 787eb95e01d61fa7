import { frozen } from '../frozen.js';
import type { Source } from '../source.js';

/** The heat of dissolving in much water, kJ/mol; below 0 where heat is given off. */
export interface HeatOfSolution {
  readonly kJ: number;
  readonly source: Source;
}

/** What a concentrated solution gives off when it is diluted without end. */
export interface HeatOfDilution {
  /** From few to many: moles of water to one of the reagent, and the heat given off, kJ/mol. */
  readonly givenOff: readonly (readonly [water: number, kJ: number])[];
  /** By how much a mole of it lessens the water in a litre, g. */
  readonly displaces: number;
  readonly source: Source;
}

const parker = (where: string, checked?: string): Source => ({
  kind: 'published',
  work: 'parker-1965',
  where,
  ...(checked !== undefined && { checked }),
});
const solutionTable = parker(
  'heats of solution at 25 °C',
  'CRC Handbook, table Enthalpy of Solution of Electrolytes',
);
const dilutionTable = parker(
  'heats of dilution at 25 °C',
  'CRC Handbook, table Enthalpy of Dilution of Acids',
);
const formation: Source = {
  kind: 'fromMemory',
  work: 'wagman-1982',
  note: 'differences of enthalpies of formation at 25 °C',
};

/** H+ + OH− → H2O at 25 °C, kJ/mol; the −57.6 that is printed for 25 °C is that of about 17 °C. @internal */
export const heatOfNeutralisation: HeatOfSolution = /*#__PURE__*/ frozen({ kJ: -55.84, source: formation });

/** By the id of the reagent. @internal */
export const heatsOfSolution: Readonly<Record<string, HeatOfSolution>> = /*#__PURE__*/ frozen({
  sodiumHydroxide: { kJ: -44.51, source: solutionTable },
  potassiumHydroxide: { kJ: -57.61, source: solutionTable }, // pellets hold water and give off less
  lithiumHydroxide: { kJ: -23.56, source: solutionTable },
  lithiumHydroxideMonohydrate: { kJ: -6.69, source: solutionTable },
  ammoniumChloride: { kJ: 14.78, source: solutionTable },
  ammoniumNitrate: { kJ: 25.69, source: solutionTable },
  ammoniumAcetate: { kJ: -2.38, source: solutionTable },
  sodiumChloride: { kJ: 3.88, source: solutionTable },
  potassiumChloride: {
    kJ: 17.22,
    source: { kind: 'fromMemory', work: 'parker-1965', note: 'heats of solution at 25 °C' },
  },
  sodiumAcetate: { kJ: -17.32, source: solutionTable },
  sodiumAcetateTrihydrate: { kJ: 19.66, source: solutionTable },
  aceticAcid: { kJ: -1.51, source: solutionTable },
  formicAcid: { kJ: -0.86, source: solutionTable },
  sodiumCarbonate: { kJ: -26.7, source: formation },
  sodiumCarbonateDecahydrate: { kJ: 65.6, source: formation },
  sodiumHydrogenCarbonate: { kJ: 18.7, source: formation },
  calciumChloride: { kJ: -81.3, source: { ...formation, note: 'calcium chloride, -81.3 kJ/mol at 25 °C' } },
  calciumChlorideDihydrate: { kJ: -45.9, source: formation },
});

const hydroxide: HeatOfDilution['givenOff'] = [
  [2.22, 21],
  [3, 14.02],
  [4, 8.46],
  [5, 5.15],
  [10, 0.38],
  [20, 0.05],
  [50, 0],
];

/** By the id of the reagent. @internal */
export const heatsOfDilution: Readonly<Record<string, HeatOfDilution>> = /*#__PURE__*/ frozen({
  hydrochloricAcid: {
    givenOff: [
      [1, 45.61],
      [2.775, 19.87],
      [3.7, 15.4],
      [5.551, 10.24],
      [10, 5.841],
      [18.5, 3.506],
      [55.51, 1.695],
      [555, 0.556],
      [50000, 0],
    ],
    displaces: 21,
    source: dilutionTable,
  },
  hydrobromicAcid: {
    givenOff: [
      [1, 48.83],
      [2.775, 19.92],
      [3.7, 14.29],
      [5.551, 8.694],
      [10, 4.59],
      [18.5, 2.611],
      [55.51, 1.314],
      [50000, 0],
    ],
    displaces: 25,
    source: dilutionTable,
  },
  nitricAcid: {
    givenOff: [
      [1, 19.73],
      [2.775, 9.498],
      [3.7, 6.883],
      [5.551, 3.933],
      [10, 1.54],
      [55.51, 0.506],
      [50000, 0],
    ],
    displaces: 36,
    source: dilutionTable,
  },
  perchloricAcid: {
    givenOff: [
      [2.775, 13.81],
      [3.7, 7.92],
      [5.551, 2.013],
      [6.938, 0.611],
      [10, 0],
    ],
    displaces: 43,
    source: dilutionTable,
  },
  // To hydrogen sulfate: the table of mixing from the pure acid less -73 kJ/mol; the second proton is that of the
  // protolyte.
  sulfuricAcid: {
    givenOff: [
      [0.01, 73],
      [0.5, 57.3],
      [1, 44.9],
      [2, 31.1],
      [5, 15],
      [10, 6],
      [25, 0.7],
      [50, 0],
    ],
    displaces: 51,
    source: {
      kind: 'fromMemory',
      work: 'rossini-1952',
      note: 'heats of mixing of sulfuric acid at 25 °C, as reprinted in R. M. Felder, R. W. Rousseau, table B.11',
    },
  },
  phosphoricAcid: {
    givenOff: [
      [0.96, 10],
      [50, 0],
    ],
    displaces: 51,
    source: {
      kind: 'fromMemory',
      work: 'wagman-1982',
      note: 'no table: an estimate of the order of 10 kJ/mol for the 85 % acid, from the -21.4 kJ/mol of the pure liquid',
    },
  },
  sodiumHydroxide: {
    givenOff: hydroxide,
    displaces: 12,
    source: {
      kind: 'fromMemory',
      work: 'rossini-1952',
      note: 'heats of solution of sodium hydroxide at 25 °C, as reprinted in R. M. Felder, R. W. Rousseau, table B.11; for 50 % carried on in a straight line of its logarithm',
    },
  },
  potassiumHydroxide: {
    givenOff: hydroxide,
    displaces: 17,
    source: { kind: 'commonPractice', note: 'potassium hydroxide taken to warm as sodium hydroxide does' },
  },
});
