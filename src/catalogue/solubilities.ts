import type { Source } from '../source.js';
import type { Reagent } from '../substance/reagent.js';
import { potassiumHydrogenTartrate } from './reagents/polycarboxylic.js';
import { calciumHydroxide } from './reagents/strong-bases.js';

/** What a litre of pure water dissolves at 25 °C, mol/L, where a work gives it. */
export interface Solubility {
  readonly reagent: Reagent;
  readonly molar: number;
  readonly source: Source;
}

/** The two solids of the catalogue whose saturated solutions are pH standards. @internal */
export const solubilities: readonly Solubility[] = [
  {
    reagent: potassiumHydrogenTartrate,
    molar: 0.0341,
    source: {
      kind: 'fromMemory',
      work: 'buck-2002',
      note: 'table 2: potassium hydrogen tartrate saturated at 25 °C, 0.0341 mol/kg',
    },
  },
  {
    reagent: calciumHydroxide,
    molar: 0.0203,
    source: {
      kind: 'fromMemory',
      work: 'bates-1973',
      note: 'calcium hydroxide saturated at 25 °C, 0.0203 mol/kg',
    },
  },
];
