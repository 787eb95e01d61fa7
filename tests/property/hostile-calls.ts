import * as protolysis from 'protolysis';
import * as colour from 'protolysis/colour';
import * as handout from 'protolysis/handout';
import { fitTitration, uncertaintyBudget } from 'protolysis/measurement';
import * as plot from 'protolysis/plot';

const { acids, indicators, reagents } = protolysis;

type Call = (...values: never[]) => unknown;

/** A public function, or a method of a result, with arguments that it answers to. */
export interface PublicCall {
  readonly name: string;
  readonly call: Call;
  readonly examples: readonly (readonly unknown[])[];
}

const acid = {
  id: 'odd',
  name: 'an acid with all there is to say',
  species: [
    { formula: 'H2A', charge: 0 },
    { formula: 'HA-', charge: -1 },
    { formula: 'A(2-)', charge: -2 },
  ],
  steps: [
    {
      pKa: 4,
      dH: 1,
      dCp: 2,
      standardUncertainty: 0.01,
      ionicStrength: 0.1,
      source: { kind: 'published', work: 'a book', where: 'page 1', checked: 'twice' },
      thermalSource: { kind: 'commonPractice', note: 'none' },
    },
    { pKa: 9, source: { kind: 'fromMemory', work: 'a book', note: 'none' } },
  ],
  alternatives: [{ step: 1, pKa: 4.1, source: { kind: 'commonPractice', note: 'none' }, note: 'older' }],
  hazard: 'a caution',
  notForBuffers: { reason: 'a reason', source: { kind: 'commonPractice', note: 'none' } },
  notes: ['a note'],
} as const;
const reagent = {
  id: 'salt',
  name: 'its salt',
  formula: 'NaCl',
  protolytes: [{ protolyte: acid, count: 1 }],
  ions: [{ ion: { formula: 'Na+', charge: 1 }, count: 1 }],
  hazard: 'none known',
  source: { kind: 'commonPractice', note: 'none' },
} as const;
const limited = { ...reagent, id: 'limited', hazard: reagents.sulfuricAcid.hazard };
const solution = protolysis.makeSolution({
  mL: 20,
  contents: [
    { reagent: reagents.aceticAcid, molar: 0.1 },
    { reagent, molar: 0.1 },
  ],
});
const base = protolysis.makeSolution({ contents: [{ reagent: reagents.sodiumHydroxide, molar: 0.1 }] });
export const titration = protolysis.titrate({ analyte: solution, titrant: base });

/** All that is asked of a titration for its indicator. */
const { pHAt, slopeAt, volumesAt, equivalencePoints } = titration;
const asked = { pHAt, slopeAt, volumesAt, equivalencePoints };
const indicator = indicators.methylOrange;
const mixed = indicators.methylRedBromocresolGreen;
const scoring = {
  at: equivalencePoints[0],
  tolerance: 0.05,
  dropSize: 0.05,
  observer: { at: 7, within: 0.5 },
  indicatorDrops: 2,
};
const weighing = { observer: { at: 7, within: 0.5, weight: (pH: number) => pH } };

/** Of each function that the package exports, arguments that it answers to. A new export finds no line here and fails. */
export const good: Record<string, readonly (readonly unknown[])[]> = {
  defineProtolyte: [[acid]],
  defineReagent: [[reagent]],
  molarMassOf: [['Na2CO3·10H2O']],
  printFormula: [['CO3(2-)']],
  cautionsOf: [
    [reagent],
    [[limited, { mL: 10, contents: [{ reagent: limited, mmol: 20 }] }]],
    [[reagent, indicator, solution, acid]],
    [{ setup: { analyte: solution, titrant: base } }],
    [{ mL: 10, contents: [{ reagent, molar: 0.1 }] }],
    [{ parts: [{ reagent }, { stock: base }], solution }],
  ],
  gasesFrom: [[solution]],
  sourcesOf: [[acid], [[solution]]],
  makeSolution: [
    [
      {
        mL: 50,
        contents: [
          { reagent, grams: 0.1, purity: 0.9 },
          { reagent, mmol: 1 },
          { reagent, molar: 0.1 },
        ],
      },
    ],
  ],
  mix: [[solution, protolysis.aliquot(base, { mL: 5 })]],
  aliquot: [[solution, { mL: 5 }]],
  addWater: [[solution, { mL: 5 }]],
  makeUpTo: [[solution, { mL: 50 }]],
  makeStock: [[{ reagent, massPercent: 10, density: 1.1 }]],
  equilibrate: [
    [solution, { pKw: 14 }],
    [solution, { celsius: 40, carbonDioxide: { atm: 0.01, pKH: 1.5, protolyte: acids.carbonic } }],
  ],
  pHOf: [[solution, { pKw: 14 }]],
  pHsOf: [
    [
      {
        contents: [
          { reagent, molar: [0.1, 0.2] },
          { reagent: reagents.aceticAcid, molar: 0.1 },
        ],
      },
      { pKw: 14 },
    ],
  ],
  molarOf: [[protolysis.equilibrate(solution), acids.acetic, 'CH3COO-']],
  titrate: [
    [{ analyte: solution, titrant: base, conditions: { pKw: 14 } }],
    [
      {
        analyte: solution,
        titrant: base,
        conditions: { celsius: 30, carbonDioxide: { atm: 0.01, escape: 0.5 } },
        boilOut: { mL: 10, atm: 0.001 },
      },
    ],
  ],
  absorbCarbonDioxide: [[base, { share: 0.02 }]],
  debyeHuckelExtendedOf: [[{ sizes: { 'H+': 9, 'Na+': 4.5 }, otherwise: 4 }]],
  daviesOf: [[{ linear: 0.2 }]],
  debyeHuckelAt: [[25]],
  pKaAt: [[acids.tris, 37]],
  pKHAt: [[25]],
  pKwAt: [[25]],
  compareModels: [
    [
      { setup: titration.setup },
      [{ celsius: 30 }, { carbonDioxide: { atm: 0.01, escape: 0.5 } }],
      { upTo: 30 },
    ],
  ],
  compareWater: [
    [
      { analyte: solution, titrant: base, conditions: { celsius: 20 } },
      { water: protolysis.waters.tapLike, mL: 30, titrant: base, endpoints: [7, 8.3] },
    ],
  ],
  prepareSession: [
    [
      {
        groups: 3,
        titrations: [{ setup: titration.setup, upTo: 30, runs: 2, indicator }],
        solutions: [{ solution: base, mL: 20 }],
        reserve: 0.1,
        rinse: 10,
      },
    ],
  ],
  prepareSolution: [
    [
      {
        from: { reagent: protolysis.reagents.sodiumCarbonate, purity: 0.99 },
        molar: 0.05,
        mL: 90,
        groups: 2,
        glass: 'B',
        flasks: [50, 100],
        pipettes: [10],
        vesselPercent: 2,
        weighing: 0.5,
      },
    ],
    [{ from: base, molar: 0.01, mL: 100 }],
  ],
  planSample: [
    [
      {
        sample: {
          reagent: protolysis.reagents.sodiumCarbonate,
          purity: 0.9,
          aliquot: { flask: 250, pipette: 20 },
        },
        titrant: { reagent: protolysis.reagents.hydrochloricAcid, molar: 0.1 },
        mL: 40,
        water: protolysis.waters.tapLike,
        glass: 'B',
        burette: 25,
        part: { from: 0.5, to: 0.8 },
        point: 2,
        weighing: 0.1,
        reading: 0.01,
        conditions: { celsius: 20 },
      },
    ],
    [
      {
        sample: { reagent: protolysis.reagents.tris, grams: 0.4 },
        titrant: { reagent: protolysis.reagents.hydrochloricAcid },
        beaker: { diameter: 50, depth: 30 },
      },
    ],
  ],
  planAdditions: [
    [
      { setup: titration.setup },
      { coarse: 1, fine: 0.5, maxStep: 1, upTo: 12, settle: 10, handling: 5, burette: 10 },
    ],
  ],
  findById: [[{ sodiumCarbonate: protolysis.reagents.sodiumCarbonate }, 'sodium carbonate']],
  csvOf: [
    [[{ mL: 1, pH: 7, of: 'x' }], { mL: 2, pH: { as: 1, heading: 'y' }, of: 'text' }, { decimalComma: true }],
    [[{ mL: 1, inside: { pH: 7, beside: [1, 'x'] } }]],
  ],
  markdownOf: [[[{ mL: 1, of: 'x' }], { mL: 2, of: 'text' }], [titration.curve({ every: 20, upTo: 40 })]],
  htmlOf: [[[{ mL: 1, of: 'x' }], { mL: 2, of: 'text' }, { caption: 'a caption' }]],
  jsonOf: [[[{ mL: 1, of: 'x' }], { mL: 2, of: 'text' }], [{ mL: [1, 2], pH: [7, 8] }]],
  printSetup: [[titration]],
  parseSetup: [[protolysis.printSetup(titration)]],
  rows: [[titration.curve({ every: 10, upTo: 40 })]],
  defineIndicator: [[indicator], [mixed]],
  chooseTransition: [[indicator, { work: 'crc-handbook' }]],
  scoreIndicator: [
    [asked, indicator, scoring],
    [asked, indicators.phenolphthalein, weighing],
  ],
  rankIndicators: [
    [asked, [indicator, mixed], scoring],
    [{ ...asked, setup: titration.setup }, [indicator, indicators.litmus], { include: ['litmus'] }],
  ],
  chooseIndicators: [[asked, [indicator, indicators.litmus], { tolerance: 0.1, include: ['litmus'] }]],
  colourAt: [
    [indicator, 7, { drops: 2 }],
    [mixed, 5],
  ],
  flaskColours: [[{ mL: [0, 1, 2], pH: [3, 4, 5] }, indicator, { drops: 2 }]],
  overshoot: [[asked, indicator, { ...scoring, drops: 3 }]],
  referenceTubes: [
    [indicator, { mL: 5, drops: 2, acid: solution, base, dropSize: 0.04, indicatorDrops: 0.5 }],
  ],
  colourDifference: [['#123456', '#abcdef', { vision: 'tritanopia' }]],
  visibleChange: [[asked, indicator, scoring]],
  rankBySight: [
    [asked, [indicator, mixed], { ...scoring, vision: 'protanopia', noticeable: 2, include: [] }],
  ],
  tabulate: [[[{ mL: 1, pH: 7, of: 'x' }], { mL: 2, pH: 1, of: 'text' }]],
};

/** Of the functions on buffers. */
export const buffers: typeof good = {
  capacityOf: [[solution, { pKw: 14 }]],
  capacityOver: [[solution, { from: 3, to: 4, every: 0.5, usefulShare: 0.5, conditions: { pKw: 14 } }]],
  strongAdditionTo: [[solution, 5, { pKw: 14 }]],
  bufferResponse: [
    [solution, { add: base, drops: 3, dropSize: 0.04, beside: [base], conditions: { pKw: 14 } }],
    [solution, { add: base, volumes: [0, 1] }],
  ],
  reserveOf: [[solution, { acid: base, base, change: 1, dropSize: 0.05, conditions: { pKw: 14 } }]],
  estimateByLogRatio: [[solution, { pKw: 14 }]],
  chooseBuffer: [
    [{ pH: 5, among: [acid, acids.citric], molar: 0.1, rankBy: 'distance', conditions: { celsius: 37 } }],
    [{ pH: 5, among: [acid, acids.citric], include: ['odd'] }],
  ],
  prepareBuffer: [
    [
      {
        pH: 5,
        molar: 0.1,
        mL: 100,
        from: [{ reagent: reagents.aceticAcid, purity: 0.99 }, reagents.sodiumAcetate],
        protolyte: acids.acetic,
        ionicStrength: 0.3,
        salt: reagents.sodiumChloride,
        temperatures: [5, 37],
        dilutions: [2],
        errorPercent: 1,
        conditions: { celsius: 20, carbonDioxide: { atm: 4e-4 }, pKw: 14 },
      },
    ],
    [{ pH: 6, mL: 20, from: [solution, base] }],
  ],
};

/** Of the functions that draw. */
const drawn = { setup: titration.setup };
const column = [0, 10, 20];
const envelope = { name: 'area', mL: column, lower: [2, 3, 4], upper: [5, 6, 7] };
const look = { width: 400, title: 'a title', words: { pH: 'acidity' } };
const read = { mL: [2, 5, 10, 15, 18, 21, 25], pH: [3.8, 4.3, 4.75, 5.2, 5.7, 11.4, 12], notes: [] };
const free = ['sampleAmount', 'probeOffset', { pKa: 'acetic', step: 1 }] as const;
const fit = fitTitration(read, { titration, free });
const shelf = [indicator, indicators.phenolphthalein];
const budget = uncertaintyBudget(
  { mL: { value: 5, standardUncertainty: 0.1, degreesOfFreedom: 4 } },
  ({ mL }) => mL / 10,
);
const explained = {
  kind: 'probeOffset',
  words: 'offset of the probe',
  evidence: 12,
  size: null,
  sentence: 'It is off.',
  check: 'a check',
  remedy: 'a remedy',
};
export const plots: typeof good = {
  displayOf: [
    [drawn],
    [solution],
    [protolysis.equilibrate(solution)],
    [protolysis.rankIndicators(titration, shelf)],
    [protolysis.chooseIndicators(titration, shelf)],
    [protolysis.prepareSolution({ from: reagents.sodiumCarbonate, molar: 0.05, mL: 90 })],
    [{ status: 'impossible', because: 'too-dilute', reason: 'a reason' }],
    [fit],
    [budget],
    [
      {
        sentence: 'It is off.',
        likely: [explained],
        scatter: 1.1,
        explanations: [explained],
        endpoint: null,
        notes: ['a note'],
      },
    ],
    [[{ mL: 1, pH: 7, of: 'x' }]],
    [{ svg: '<svg/>', title: 'a title', description: 'a description' }],
  ],
  drawFit: [[fit, look]],
  drawBudget: [
    [
      {
        contributions: [
          { input: 'mass', percent: 60 },
          { input: 'volume', percent: 40 },
        ],
      },
      look,
    ],
  ],
  drawTitration: [
    [drawn, { ...look, upTo: 30, indicators: [indicator], slope: true, envelope }],
    [drawn, { additions: { every: 5, upTo: 20 } }],
    [drawn, { additions: { volumes: [1, 2] } }],
  ],
  drawCurves: [[[{ name: 'one', titration: drawn }], { ...look, upTo: 30, differences: true }]],
  drawReadings: [[{ mL: column, pH: [3, 4, 5], notes: [] }, drawn, { ...look, upTo: 30, envelope }]],
  drawSpecies: [[acid, { ...look, from: 2, to: 12, celsius: 30 }]],
  drawSpeciesAlong: [[drawn, acids.acetic, { ...look, upTo: 30 }]],
  drawBuffer: [
    [
      { mL: column, pH: [7, 6, 5], water: [7, 2, 1], beside: [[7, 3, 2]] },
      { ...look, besideNames: ['tap'] },
    ],
  ],
  drawCapacity: [
    [
      {
        pH: [3, 4, 5],
        capacity: [0.1, 0.2, 0.1],
        peaks: [{ pH: 4, capacity: 0.2, useful: { from: 3.5, to: null } }],
        usefulShare: 0.3,
        notes: [],
      },
      look,
    ],
  ],
};

const recipe = { parts: [{ reagent }, { stock: solution }], solution, steps: ['a step'], pH: 7 };

/** Of the page for the bench. */
export const handouts: typeof good = {
  makeHandout: [
    [
      drawn,
      {
        audience: 'instructor',
        paper: 'letter',
        title: 'a title',
        purpose: 'a purpose',
        sample: { name: 'powder', grams: 0.25 },
        recipes: [recipe],
        indicators: [indicator],
        additions: { coarse: 1, fine: 0.5, maxStep: 1, upTo: 30, settle: 10, handling: 10, burette: 25 },
        buffer: { solution, add: base, drops: 3, dropSize: 0.04, recipe },
        words: { title: 'other', checks: ['a check'], picture: { pH: 'acidity' } },
      },
    ],
    [drawn, { indicators: [indicator, mixed], words: { pointColumns: ['a', 'b', 'c'] } }],
  ],
};

/** The same for each method of a titration. */
export const goodForTitration: Record<string, readonly (readonly unknown[])[]> = {
  pHAt: [[5]],
  slopeAt: [[5]],
  jumpAt: [[5, { within: 0.1 }]],
  equilibriumAt: [[5]],
  volumeAt: [[7]],
  volumesAt: [[7]],
  pHs: [[[1, 2, 3], new Float64Array(3)]],
  curve: [[{ every: 5, upTo: 40 }], [{ volumes: [1, 2] }], [{ maxStep: 1, upTo: 40 }]],
};

/** Thrown, not called. */
const classes = ['InputError'];

const functionsOf = (holder: object): [string, Call][] =>
  Object.entries(holder).filter((entry): entry is [string, Call] => typeof entry[1] === 'function');
/** The entries that are met here; `exact` and `measurement` have such a file of their own. */
export const entries = { index: protolysis, acids, reagents, indicators, colour, plot, handout };
export const exported = Object.values(entries)
  .flatMap(functionsOf)
  .filter(([name]) => !classes.includes(name));
export const methods = functionsOf(titration);

/** It hands back an entry of the caller's own: only whether it answers is looked at. */
const answers =
  (call: Call): Call =>
  (...values) =>
    call(...values) !== undefined;

export const calls: readonly PublicCall[] = [
  ...exported.map(([name, call]) => ({
    name,
    call: name === 'findById' ? answers(call) : call,
    examples: { ...good, ...buffers, ...plots, ...handouts }[name] ?? [],
  })),
  ...methods.map(([name, call]) => ({
    name: `titration.${name}`,
    call,
    examples: goodForTitration[name] ?? [],
  })),
];
