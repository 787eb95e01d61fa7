import { frozen } from '../frozen.js';
import type { Source } from '../source.js';

/** How a reagent that is no dry solid comes: a pure liquid, or a solution in water. */
export interface SoldAs {
  readonly form: 'liquid' | 'solution';
  /** Of the usual bottle. */
  readonly massPercent: number;
  /** Of the bottles on sale, in mass percent. */
  readonly range: readonly [from: number, to: number];
  /** Of the usual bottle, g/mL. */
  readonly density: number;
  /** Of the density, °C. */
  readonly celsius: number;
  /** Whether its vapour belongs in a fume cupboard. */
  readonly fumes: boolean;
  /** Whether it is sold as a solid too: what is stronger than `range` is that solid. */
  readonly alsoSolid?: true;
  readonly source: Source;
}

/** Assay and density as tables of concentrated reagents and bottles print them; the label of the bottle goes before. */
const bottle = (note: string): Source => ({ kind: 'commonPractice', note: `as bottles are sold: ${note}` });

const memory = (note: string): Source => ({ kind: 'fromMemory', note: `as bottles are sold: ${note}` });

/** By the id of the reagent; what is not here is a dry solid, or not known. @internal */
export const asSold: Readonly<Record<string, SoldAs>> = /*#__PURE__*/ frozen({
  hydrochloricAcid: {
    form: 'solution',
    massPercent: 37,
    range: [30, 38],
    density: 1.184,
    celsius: 20,
    fumes: true,
    source: /*#__PURE__*/ bottle(
      'hydrochloric acid 36.5 to 38.0 %, 12.1 mol/L at 37.2 %, and 32 %; density from memory',
    ),
  },
  hydrobromicAcid: {
    form: 'solution',
    massPercent: 48,
    range: [47, 49],
    density: 1.49,
    celsius: 20,
    fumes: true,
    source: /*#__PURE__*/ bottle('hydrobromic acid 47 to 49 %, 1.49 g/mL'),
  },
  nitricAcid: {
    form: 'solution',
    massPercent: 65,
    range: [64, 70],
    density: 1.391,
    celsius: 20,
    fumes: true,
    source: /*#__PURE__*/ memory('nitric acid 65 %, 1.391 g/mL at 20 °C; also 69 to 70 %, 1.41 g/mL'),
  },
  perchloricAcid: {
    form: 'solution',
    massPercent: 70.5,
    range: [60, 72],
    density: 1.67, // 1.664 elsewhere, half a percent of strength
    celsius: 20,
    fumes: false,
    source: /*#__PURE__*/ bottle('perchloric acid 70.0 to 72.0 %, 1.67 g/mL, and 60 to 62 %'),
  },
  sulfuricAcid: {
    form: 'solution',
    massPercent: 96,
    range: [95, 98],
    density: 1.84,
    celsius: 20,
    fumes: false,
    source: /*#__PURE__*/ bottle('sulfuric acid 95.0 to 98.0 %, 1.84 g/mL, 18.0 mol/L'),
  },
  phosphoricAcid: {
    form: 'solution',
    massPercent: 85,
    range: [85, 87],
    density: 1.685, // 1.70 and 1.71 elsewhere do not fit the mol/L beside them
    celsius: 25,
    fumes: false,
    source: /*#__PURE__*/ bottle('phosphoric acid 85 %, 1.685 g/mL at 25 °C, 14.6 mol/L'),
  },
  aceticAcid: {
    form: 'liquid',
    massPercent: 99.8,
    range: [99.7, 99.9],
    density: 1.049,
    celsius: 20,
    fumes: true,
    source: /*#__PURE__*/ bottle(
      'glacial acetic acid 99.7 to 99.9 %, 1.05 g/mL, 17.4 mol/L; third decimal from memory',
    ),
  },
  formicAcid: {
    form: 'liquid',
    massPercent: 98,
    range: [85, 100],
    density: 1.22,
    celsius: 20,
    fumes: true,
    source: /*#__PURE__*/ bottle('formic acid 95 to 98 %, 1.22 g/mL, and 88 to 92 %'),
  },
  lacticAcid: {
    form: 'solution',
    massPercent: 90,
    range: [80, 92],
    density: 1.206,
    celsius: 20,
    fumes: false,
    source: /*#__PURE__*/ bottle(
      'lactic acid 88 to 92 %, its esters counted as acid, 1.20 to 1.21 g/mL, and 80 %',
    ),
  },
  ammonia: {
    form: 'solution',
    massPercent: 25,
    range: [24, 35],
    density: 0.91,
    celsius: 20,
    fumes: true,
    source: /*#__PURE__*/ bottle('ammonia solution 25 %, 0.910 g/mL, 13.4 mol/L; also 28 to 30 %'),
  },
  sodiumHydroxide: {
    form: 'solution',
    massPercent: 50,
    range: [1, 52],
    density: 1.525, // 1.515 elsewhere, at 25 °C
    celsius: 20,
    fumes: false,
    alsoSolid: true,
    source: /*#__PURE__*/ bottle(
      'sodium hydroxide 50.0 to 52.0 %, 1.53 g/mL at 50.5 %; pellets 97 % and more',
    ),
  },
  potassiumHydroxide: {
    form: 'solution',
    massPercent: 45,
    range: [1, 50],
    density: 1.456,
    celsius: 25,
    fumes: false,
    alsoSolid: true,
    source: /*#__PURE__*/ bottle(
      'potassium hydroxide 45.0 to 46.0 %, 1.456 g/mL at 25 °C; pellets 85 % and more',
    ),
  },
});
