import { acids, indicators, pHStandards, pKHAt, pKwAt } from 'protolysis';
import { asSold } from '../../src/catalogue/as-sold.js';
import { chlorine, chlorineHydrolysis, gases } from '../../src/catalogue/gases.js';
import { heatOfNeutralisation, heatsOfDilution, heatsOfSolution } from '../../src/catalogue/heats.js';
import * as sparinglySoluble from '../../src/catalogue/sparingly-soluble.js';
import { henryFit } from '../../src/equilibrium/carbon-dioxide.js';
import { movedPKa } from '../../src/equilibrium/temperature/pka-at.js';
import { waterAt25 } from '../../src/equilibrium/temperature/water-at-25.js';
import { waterDensityAt } from '../../src/equilibrium/temperature/water-density.js';
import { waterPermittivityAt } from '../../src/equilibrium/temperature/water-permittivity.js';
import { waterSources } from '../../src/equilibrium/temperature/water-sources.js';
import { doubles } from '../../src/solver/arithmetic.js';
import type { Source } from '../../src/source.js';

/** A number of the catalogue, as a second work could print it. */
export interface CatalogueValue {
  /** Its path, such as `acids.acetic.1.pKa`. */
  readonly name: string;
  readonly kind: Kind;
  /** At a temperature, °C, where it depends on that. */
  readonly at: (celsius: number) => number;
  readonly source: Source;
}

export const kinds = [
  'pKa',
  'dH of ionisation',
  'dCp of ionisation',
  'range of an indicator',
  'pKIn',
  'solubility product',
  'solubility',
  'density as sold',
  'strength as sold',
  'heat',
  'Henry constant',
  'pH standard',
  'water',
] as const;
export type Kind = (typeof kinds)[number];

const entry = (name: string, kind: Kind, value: number, source: Source): CatalogueValue => ({
  name,
  kind,
  at: () => value,
  source,
});

const ofAcids = Object.values(acids).flatMap(({ id, steps }) =>
  steps.flatMap((step, index): CatalogueValue[] => {
    const name = `acids.${id}.${index + 1}`;
    const { pKa, dH, dCp, source, thermalSource = source } = step;
    return [
      { name: `${name}.pKa`, kind: 'pKa', at: (t) => (t === 25 ? pKa : movedPKa(doubles, step, t)), source },
      ...(dH === undefined ? [] : [entry(`${name}.dH`, 'dH of ionisation', dH, thermalSource)]),
      ...(dCp === undefined ? [] : [entry(`${name}.dCp`, 'dCp of ionisation', dCp, thermalSource)]),
    ];
  }),
);

const ofIndicators = Object.values(indicators).flatMap(
  ({ id, transition, source, pKIn, pKInSource = source }) => [
    entry(`indicators.${id}.range`, 'range of an indicator', (transition.from + transition.to) / 2, source),
    ...(pKIn === undefined ? [] : [entry(`indicators.${id}.pKIn`, 'pKIn', pKIn, pKInSource)]),
  ],
);

/** A product of concentrations stands for a solubility, which the note of its source has in mol/L or mol/kg. */
const ofSolids = Object.entries(sparinglySoluble).map(([key, { of, log10K, source }]) => {
  if (of === 'activities') return entry(`solubilityProducts.${key}`, 'solubility product', log10K, source);
  const [, molar] = /solubility: ([\d.]+) mol/.exec('note' in source ? source.note : '') ?? [];
  return entry(`solubilities.${key}`, 'solubility', Number(molar), source);
});

const ofBottles = Object.entries(asSold).flatMap(([id, { density, massPercent, source }]) => [
  entry(`asSold.${id}.density`, 'density as sold', density, source),
  entry(`asSold.${id}.massPercent`, 'strength as sold', massPercent, source),
]);

/** kJ/(mol·K): P. P. Singh et al., Can. J. Chem. 54, 3315 (1976), abstract: 215.2 ± 4.5 J/(mol·K) from 25 °C. */
const neutralisationDCp = 0.2152;

const ofHeats: CatalogueValue[] = [
  {
    ...entry('heats.neutralisation', 'heat', Number.NaN, heatOfNeutralisation.source),
    at: (t) => heatOfNeutralisation.kJ + neutralisationDCp * (t - 25),
  },
  ...Object.entries(heatsOfSolution).map(([id, { kJ, source }]) =>
    entry(`heats.solution.${id}`, 'heat', kJ, source),
  ),
  ...Object.entries(heatsOfDilution).flatMap(([id, { givenOff, source }]) =>
    givenOff.map(([water, kJ]) => entry(`heats.dilution.${id}.${water}`, 'heat', kJ, source)),
  ),
];

const ofGases = [
  ...[chlorine, ...gases].map(({ name, molarPerAtm, solubilitySource }) =>
    entry(`gases.${name}`, 'Henry constant', molarPerAtm, solubilitySource),
  ),
  entry('gases.chlorine.hydrolysis', 'Henry constant', chlorineHydrolysis.K, chlorineHydrolysis.source),
];

const ofStandards = Object.values(pHStandards).flatMap(({ id, celsius, pH, source }) =>
  celsius.map((t, k) => entry(`pHStandards.${id}.${t}`, 'pH standard', pH[k] as number, source)),
);

const ofWater: CatalogueValue[] = [
  { name: 'water.pKw', kind: 'water', at: pKwAt, source: waterAt25.source },
  {
    name: 'water.density',
    kind: 'water',
    at: (t) => waterDensityAt(doubles, t),
    source: waterSources.density,
  },
  {
    name: 'water.permittivity',
    kind: 'water',
    at: (t) => waterPermittivityAt(doubles, t),
    source: waterSources.permittivity,
  },
  { name: 'water.pKH', kind: 'water', at: pKHAt, source: henryFit.source },
];

/** Every number of the catalogue that an equilibrium, a recipe or a caution rests on. */
export const catalogueValues: readonly CatalogueValue[] = [
  ...ofAcids,
  ...ofIndicators,
  ...ofSolids,
  ...ofBottles,
  ...ofHeats,
  ...ofGases,
  ...ofStandards,
  ...ofWater,
];
