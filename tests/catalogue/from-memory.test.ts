import {
  batesGuggenheim,
  davies,
  debyeHuckelExtended,
  debyeHuckelLimiting,
  guntelberg,
  henryFit,
  pHStandards,
  waterSources,
  waters,
} from 'protolysis';
import { expect, test } from 'vitest';
import * as acids from '../../src/acids.js';
import { asSold } from '../../src/catalogue/as-sold.js';
import { atomicWeightsFromMemory } from '../../src/catalogue/atomic-weights.js';
import { chlorine, chlorineHydrolysis, gases } from '../../src/catalogue/gases.js';
import { heatOfNeutralisation, heatsOfDilution, heatsOfSolution } from '../../src/catalogue/heats.js';
import * as solids from '../../src/catalogue/sparingly-soluble.js';
import * as indicatorCatalogue from '../../src/indicators.js';
import * as reagents from '../../src/reagents.js';
import type { Source } from '../../src/source.js';
import type { Indicator } from '../../src/substance/indicator.js';
import type { Protolyte } from '../../src/substance/protolyte.js';
import { filesIn, read } from '../tree.js';

// What rests on memory alone. An entry leaves these lists when someone has read its page, none may join them unseen, and
// the release notes count what is left: 27 pKa, 61 pairs of dH and dCp, 14 alternatives, 15 atomic weights, and the
// concentration limits in the cautions of 14 reagents; of indicators 5 ranges, 18 pKIn, 2 titration exponents, 24 sets of
// absorption bands, 19 recipes of stock solutions, 39 alternative ranges and 13 alternative pKIn; and what three comments
// on colour say they quote from memory.

/** Of each protolyte, the steps whose pKa is from memory. */
const pKa = {
  ascorbic: [1],
  glutamicAcid: [1, 2, 3],
  hepes: [1],
  histidine: [1, 2],
  hydrazinium: [1, 2],
  maleic: [1, 2],
  methylammonium: [1],
  oxalic: [1, 2],
  phosphoric: [1],
  phthalic: [1, 2],
  pipes: [1, 2],
  silicic: [1, 2],
  sulfamic: [1],
  taps: [1],
  tartaric: [2],
  tricine: [1, 2],
  triethanolammonium: [1],
};

/** Of each protolyte, the steps whose dH and dCp are from memory. */
const thermal = {
  acetic: [1],
  ammonium: [1],
  arsenic: [1, 2, 3],
  benzoic: [1],
  bes: [1],
  bisTris: [1],
  boric: [1],
  caps: [1],
  carbonic: [1, 2],
  citric: [1, 2, 3],
  cysteine: [1, 2, 3],
  formic: [1],
  hepes: [1, 2],
  histidine: [1, 2, 3],
  hydrazinium: [1, 2],
  hydrocyanic: [1],
  hydrofluoric: [1],
  hydrogenSulfide: [1],
  hypochlorous: [1],
  lactic: [1],
  maleic: [1, 2],
  mes: [1],
  methylammonium: [1],
  mops: [1],
  mopso: [1],
  nitrous: [1],
  oxalic: [1, 2],
  phenol: [1],
  phosphoric: [1, 2, 3],
  phthalic: [1, 2],
  pipes: [2],
  pyridinium: [1],
  silicic: [1],
  succinic: [1, 2],
  sulfuric: [1],
  sulfurous: [1, 2],
  taps: [1],
  tartaric: [1, 2],
  tes: [1],
  tricine: [1, 2],
  triethanolammonium: [1],
};

/** Of each protolyte, the pKa values kept beside those in use that are from memory. */
const alternatives = {
  arsenic: [2.31, 7.05, 11.9],
  edta: [6.273, 10.948],
  formic: [3.745],
  fumaric: [3.02, 4.38, 3.053, 4.494],
  maleic: [6.23],
  nitrous: [3.15],
  silicic: [9.9, 11.8],
};

const cautions = [
  'aceticAcid',
  'ammonia',
  'borax',
  'boricAcid',
  'disodiumTetraborate',
  'formicAcid',
  'hydrobromicAcid',
  'hydrochloricAcid',
  'nitricAcid',
  'perchloricAcid',
  'phosphoricAcid',
  'potassiumHydroxide',
  'sodiumHydroxide',
  'sulfuricAcid',
];

const isFromMemory = (source: Source | undefined): boolean => source?.kind === 'fromMemory';

/** By id, what `find` finds in each protolyte, where it finds anything. */
function perProtolyte(find: (protolyte: Protolyte) => number[]): Record<string, number[]> {
  const found = Object.values(acids).map((protolyte: Protolyte) => [protolyte.id, find(protolyte)] as const);
  return Object.fromEntries(found.filter(([, values]) => values.length > 0));
}

const count = (found: Readonly<Record<string, readonly number[]>>): number =>
  Object.values(found).flat().length;

test('the pKa values that rest on memory alone are these 27', () => {
  const found = perProtolyte(({ steps }) =>
    steps.flatMap(({ source }, i) => (isFromMemory(source) ? [i + 1] : [])),
  );
  expect(found).toEqual(pKa);
  expect(count(found)).toBe(27);
});

test('the enthalpies and heat capacities that rest on memory alone are those of these 61 steps', () => {
  const found = perProtolyte(({ steps }) =>
    steps.flatMap(({ dH, source, thermalSource = source }, i) =>
      dH !== undefined && isFromMemory(thermalSource) ? [i + 1] : [],
    ),
  );
  expect(found).toEqual(thermal);
  expect(count(found)).toBe(61);
});

test('the alternatives that rest on memory alone are these 14', () => {
  const found = perProtolyte(({ alternatives: others = [] }) =>
    others.flatMap(({ source, pKa: value }) => (isFromMemory(source) ? [value] : [])),
  );
  expect(found).toEqual(alternatives);
  expect(count(found)).toBe(14);
});

test('the atomic weights that rest on memory alone are 15', () => {
  expect(atomicWeightsFromMemory.length).toBe(15);
});

test('the cautions whose limits rest on memory alone are these', () => {
  const found = Object.values(reagents).flatMap(({ id, hazard }) =>
    typeof hazard === 'object' && isFromMemory(hazard.source) ? [id] : [],
  );
  expect(found.sort()).toEqual(cautions);
});

test('of the gases the solubilities rest on memory alone, and all limits but that of carbon dioxide', () => {
  const all = [...gases, chlorine];
  expect(all.every(({ solubilitySource }) => isFromMemory(solubilitySource))).toBe(true);
  expect(all.flatMap(({ name, limitSource }) => (isFromMemory(limitSource) ? [] : [name]))).toEqual([
    'carbon dioxide',
  ]);
  expect(isFromMemory(chlorineHydrolysis.source)).toBe(true);
  expect(read('README.md').replaceAll(/\s+/g, ' ')).toContain(
    `solubilities and limits of ${all.length} gases`,
  );
});

test('what rests on memory alone among the data of real solutions is this', () => {
  const fits = perProtolyte(({ steps }) =>
    steps.flatMap(({ log10K }, i) => (isFromMemory(log10K?.source) ? [i + 1] : [])),
  );
  expect(fits).toEqual({ carbonic: [1, 2] });
  const models = { debyeHuckelLimiting, debyeHuckelExtended, guntelberg, batesGuggenheim, davies };
  const others = {
    ...models,
    henryFit,
    density: { source: waterSources.density },
    permittivity: { source: waterSources.permittivity },
    ...waters,
    ...pHStandards,
  };
  const found = Object.entries(others).flatMap(([name, { source }]) => (isFromMemory(source) ? [name] : []));
  expect(found.sort()).toEqual(
    [
      'davies',
      'debyeHuckelExtended',
      'henryFit',
      'inAir',
      'permittivity',
      ...Object.keys(pHStandards), // some of their values were read, see each
    ].sort(),
  );
});

const indicators = Object.values<Indicator>(indicatorCatalogue).sort((a, b) => (a.id < b.id ? -1 : 1));

/** Of each indicator, what is from memory among the values in use. */
const inUse = {
  range: ['cresolRedAcid', 'mCresolPurple', 'nitramine', 'oCresolphthalein', 'tropaeolinO'],
  pKIn: [
    'alizarinYellowR',
    'bromocresolGreen',
    'bromocresolPurple',
    'bromophenolBlue',
    'congoRed',
    'cresolRed',
    'litmus',
    'mCresolPurple',
    'methylOrange',
    'methylYellow',
    'neutralRed',
    'nitramine',
    'oCresolphthalein',
    'phenolRed',
    'phenolphthalein',
    'thymolBlue',
    'thymolBlueAcid',
    'tropaeolinO',
  ],
  titrationExponent: ['methylOrange', 'methylRedBromocresolGreen'],
  bands: [
    'alizarinYellowR',
    'bromocresolGreen',
    'bromocresolPurple',
    'bromophenolBlue',
    'bromothymolBlue',
    'chlorophenolRed',
    'congoRed',
    'cresolRed',
    'cresolRedAcid',
    'indigoCarmine',
    'litmus',
    'mCresolPurple',
    'methylOrange',
    'methylRed',
    'methylViolet',
    'methylYellow',
    'neutralRed',
    'oCresolphthalein',
    'phenolRed',
    'phenolphthalein',
    'thymolBlue',
    'thymolBlueAcid',
    'thymolphthalein',
    'tropaeolinO',
  ],
  stock: [
    'alizarinYellowR',
    'bromocresolPurple',
    'bromophenolBlue',
    'chlorophenolRed',
    'congoRed',
    'cresolRed',
    'cresolRedAcid',
    'indigoCarmine',
    'methylRed',
    'methylRedBromocresolGreen',
    'methylViolet',
    'methylYellow',
    'neutralRed',
    'oCresolphthalein',
    'phenolRed',
    'thymolBlue',
    'thymolBlueAcid',
    'thymolphthalein',
    'tropaeolinO',
  ],
};

/** Of each indicator, the works whose ranges beside the one in use are from memory. */
const otherRanges = {
  alizarinYellowR: ['harris-2016', 'crc-handbook'],
  bromocresolGreen: ['crc-handbook', 'harris-2016'],
  bromocresolPurple: ['crc-handbook', 'harris-2016'],
  bromophenolBlue: ['crc-handbook'],
  bromothymolBlue: ['crc-handbook', 'harris-2016'],
  chlorophenolRed: ['harris-2016', 'crc-handbook'],
  congoRed: ['crc-handbook', 'harris-2016'],
  cresolRed: ['harris-2016', 'crc-handbook'],
  cresolRedAcid: ['kolthoff-1937'],
  litmus: ['harris-2016'],
  methylOrange: ['harris-2016', 'crc-handbook'],
  methylRed: ['crc-handbook', 'harris-2016'],
  methylViolet: ['crc-handbook', 'harris-2016'],
  methylYellow: ['crc-handbook'],
  neutralRed: ['crc-handbook', 'harris-2016'],
  nitramine: ['crc-handbook'],
  oCresolphthalein: ['crc-handbook'],
  phenolRed: ['crc-handbook', 'harris-2016'],
  phenolphthalein: ['crc-handbook', 'harris-2016'],
  thymolBlue: ['harris-2016', 'crc-handbook'],
  thymolBlueAcid: ['crc-handbook', 'harris-2016'],
  thymolphthalein: ['crc-handbook', 'harris-2016'],
  tropaeolinO: ['crc-handbook'],
};

/** Of each indicator, the pKIn beside the one in use that are from memory. */
const otherPKIns = {
  bromocresolGreen: [4.9],
  bromocresolPurple: [6.4],
  bromophenolBlue: [4.1],
  bromothymolBlue: [7.1, 7.3],
  chlorophenolRed: [6, 6.25],
  cresolRed: [8.46],
  methylRed: [5],
  neutralRed: [6.8],
  phenolRed: [8],
  thymolBlue: [9.2],
  thymolphthalein: [9.7],
};

/** Every source that stands in an indicator; those of a mixture's parts stand in their own. */
function sourcesIn({ parts, ...own }: Indicator): Source[] {
  const found: Source[] = [];
  JSON.stringify(own, (_, value) => {
    if (typeof value === 'object' && value !== null && 'kind' in value) found.push(value);
    return value;
  });
  return found;
}

/** By id, what `find` finds in each indicator, where it finds anything. */
function perIndicator<T>(find: (indicator: Indicator) => T[]): Record<string, T[]> {
  const found = indicators.map((indicator) => [indicator.id, find(indicator)] as const);
  return Object.fromEntries(found.filter(([, values]) => values.length > 0));
}

test('what rests on memory alone of an indicator in use is this', () => {
  const idsWith = (sourceOf: (indicator: Indicator) => Source | undefined) =>
    indicators.filter((indicator) => isFromMemory(sourceOf(indicator))).map(({ id }) => id);
  const found = {
    range: idsWith(({ source }) => source),
    pKIn: idsWith(({ pKIn, pKInSource, source }) =>
      pKIn === undefined ? undefined : (pKInSource ?? source),
    ),
    titrationExponent: idsWith(({ titrationExponent }) => titrationExponent?.source),
    bands: idsWith(({ bands }) => bands?.source),
    stock: idsWith(({ stock }) => stock?.source),
  };
  expect(found).toEqual(inUse);
  expect(Object.values(found).map((ids) => ids.length)).toEqual([5, 18, 2, 24, 19]);
});

test('the alternatives of indicators that rest on memory alone are 39 ranges and 13 pKIn', () => {
  const ranges = perIndicator(({ alternatives: { transitions = [] } = {} }) =>
    transitions.flatMap(({ source }) => (source.kind === 'fromMemory' ? [source.work] : [])),
  );
  const pKIns = perIndicator(({ alternatives: { pKIns: values = [] } = {} }) =>
    values.flatMap(({ source, pKIn }) => (isFromMemory(source) ? [pKIn] : [])),
  );
  expect(ranges).toEqual(otherRanges);
  expect(pKIns).toEqual(otherPKIns);
  expect([Object.values(ranges).flat().length, count(pKIns)]).toEqual([39, 13]);
});

test('no other source in an indicator rests on memory alone', () => {
  expect(indicators.flatMap(sourcesIn).filter(isFromMemory).length).toBe(5 + 18 + 2 + 24 + 19 + 39 + 13);
});

// Numbers of a method stand in code, their source in a comment above: the colour of a complement (8 wavelengths), the
// colour-matching functions (18 numbers) and the just noticeable difference (1).
test('the comments that quote from memory are these', () => {
  const quoting = filesIn('src/').filter((path) => /^ ?\* .*from memory[,.:;]/m.test(read(path)));
  expect(quoting.sort()).toEqual([
    'src/catalogue/atomic-weights.ts', // counted above
    'src/indicator/bands-of-name.ts',
    'src/indicator/colour-channels.ts',
    'src/indicator/rank-by-sight.ts',
  ]);
});

test('README and changelog give these counts', () => {
  const steps = Object.values(acids).reduce((all, protolyte: Protolyte) => all + protolyte.steps.length, 0);
  const [readme, changelog] = ['README.md', 'CHANGELOG.md'].map((path) => read(path).replaceAll(/\s+/g, ' '));
  const { range, pKIn, titrationExponent, bands, stock } = inUse;
  expect(readme).toContain(`${count(pKa)} of ${steps} pKa values, ${count(thermal)} pairs of enthalpy`);
  expect(readme).toContain(`${atomicWeightsFromMemory.length} atomic weights`);
  expect(readme).toContain(`cautions of ${cautions.length} reagents`);
  expect(readme).toContain(`${range.length} ranges, ${pKIn.length} pKIn and ${bands.length} sets`);
  expect(changelog).toContain(
    `${count(pKa)} pKa values, ${count(thermal)} pairs of enthalpy and heat capacity, ${count(alternatives)} alternative`,
  );
  expect(changelog).toContain(
    `${range.length} ranges, ${pKIn.length} pKIn, ${titrationExponent.length} titration exponents, ${bands.length} sets of absorption bands, ${stock.length} recipes`,
  );
  expect(changelog).toContain(
    `${Object.values(otherRanges).flat().length} ranges and ${count(otherPKIns)} pKIn;`,
  );
});

test('of bottles and heats, these rest on memory', () => {
  const memoryOf = (table: Readonly<Record<string, { readonly source: Source }>>) =>
    Object.entries(table).flatMap(([id, { source }]) => (source.kind === 'fromMemory' ? [id] : []));
  expect(memoryOf(asSold)).toEqual(['nitricAcid']);
  expect(memoryOf(heatsOfSolution)).toEqual([
    'potassiumChloride',
    'sodiumCarbonate',
    'sodiumCarbonateDecahydrate',
    'sodiumHydrogenCarbonate',
    'calciumChloride',
    'calciumChlorideDihydrate',
  ]);
  expect(memoryOf(heatsOfDilution)).toEqual(['sulfuricAcid', 'phosphoricAcid', 'sodiumHydroxide']);
  expect(heatOfNeutralisation.source.kind).toBe('fromMemory');
});

test('of solubility products and solubilities, all but these rest on memory', () =>
  expect(
    Object.values(solids)
      .flatMap(({ name, source }) => (source.kind === 'fromMemory' ? [] : [name]))
      .sort(),
  ).toEqual([
    'barium carbonate',
    'barium oxalate',
    'barium sulfate',
    'calcium carbonate',
    'calcium fluoride',
    'calcium oxalate',
    'calcium sulfate',
  ]));
