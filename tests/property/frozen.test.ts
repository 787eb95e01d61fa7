import * as main from 'protolysis';
import * as acidsEntry from 'protolysis/acids';
import * as colour from 'protolysis/colour';
import * as exact from 'protolysis/exact';
import * as indicatorsEntry from 'protolysis/indicators';
import * as measurement from 'protolysis/measurement';
import * as reagentsEntry from 'protolysis/reagents';
import { describe, expect, test } from 'vitest';

/** The paths of all objects that could be changed; getters are called, functions, typed arrays and numbers of decimal.js are not data. */
function changeable(value: unknown, path: string, seen = new Set<object>()): string[] {
  if (typeof value !== 'object' || value === null || seen.has(value)) return [];
  if (ArrayBuffer.isView(value) || 'toDecimalPlaces' in value) return [];
  seen.add(value);
  const own =
    Object.isFrozen(value) || Object.prototype.toString.call(value) === '[object Module]' ? [] : [path];
  return [
    ...own,
    ...Object.entries(value).flatMap(([key, inside]) => changeable(inside, `${path}.${key}`, seen)),
  ];
}

const { reagents, acids, indicators } = main;
const sample = main.makeSolution({ mL: 20, contents: [{ reagent: reagents.sodiumCarbonate, molar: 0.05 }] });
const acid = main.makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] });
const titration = main.titrate({ analyte: sample, titrant: acid });
const pair = [
  { reagent: reagents.sodiumDihydrogenPhosphate, purity: 1 },
  { reagent: reagents.disodiumHydrogenPhosphate, purity: 1 },
] as const;
const list = [indicators.methylOrange, indicators.phenolphthalein];

describe.each(
  Object.entries({ main, acidsEntry, colour, exact, indicatorsEntry, measurement, reagentsEntry }),
)('every export of %s', (name, entry) => {
  test('is frozen, deeply', () => expect(changeable(entry, name)).toEqual([]));
});

describe('the result of', () => {
  const results: Record<string, () => unknown> = {
    makeSolution: () => sample,
    makeStock: () => main.makeStock({ reagent: reagents.hydrochloricAcid, massPercent: 37, density: 1.18 }),
    mix: () => main.mix(sample, sample),
    aliquot: () => main.aliquot(sample, { mL: 5 }),
    addWater: () => main.addWater(sample, { mL: 5 }),
    makeUpTo: () => main.makeUpTo(sample, { mL: 50 }),
    absorbCarbonDioxide: () =>
      main.absorbCarbonDioxide(
        main.makeSolution({ contents: [{ reagent: reagents.sodiumHydroxide, molar: 0.1 }] }),
        { share: 0.1 },
      ),
    defineProtolyte: () => main.defineProtolyte(JSON.parse(JSON.stringify(acids.acetic))),
    defineReagent: () => main.defineReagent(JSON.parse(JSON.stringify(reagents.sodiumAcetate))),
    defineIndicator: () => main.defineIndicator(JSON.parse(JSON.stringify(indicators.methylRed))),
    pKaAt: () => main.pKaAt(acids.tris, 37),
    equilibrate: () => main.equilibrate(sample),
    titrate: () => titration,
    'titrate, boiled out': () => main.titrate({ analyte: sample, titrant: acid, boilOut: { mL: 19 } }),
    volumesAt: () => titration.volumesAt(7),
    curve: () => titration.curve({ every: 0.5, upTo: 25 }),
    rows: () => main.rows(titration.curve({ every: 0.5, upTo: 25 })),
    compareModels: () => main.compareModels(titration, [{ activity: main.davies }]),
    scoreIndicator: () => main.scoreIndicator(titration, indicators.methylOrange),
    rankIndicators: () => main.rankIndicators(titration, list),
    chooseIndicators: () => main.chooseIndicators(titration, list),
    flaskColours: () => main.flaskColours(titration.curve({ every: 1, upTo: 20 }), indicators.methylOrange),
    colourAt: () => main.colourAt(indicators.methylOrange, 4),
    overshoot: () => main.overshoot(titration, indicators.methylOrange),
    capacityOver: () => main.capacityOver(sample, { from: 5, to: 11 }),
    bufferResponse: () => main.bufferResponse(sample, { add: acid, drops: 5 }),
    reserveOf: () => main.reserveOf(sample),
    estimateByLogRatio: () => main.estimateByLogRatio(sample),
    strongAdditionTo: () => main.strongAdditionTo(sample, 8 as never),
    chooseBuffer: () => main.chooseBuffer({ pH: 7, among: Object.values(acids) } as never),
    prepareBuffer: () => main.prepareBuffer({ pH: 7, molar: 0.05, mL: 500, from: pair }),
    sourcesOf: () => main.sourcesOf(titration),
    cautionsOf: () => main.cautionsOf(titration),
    gasesFrom: () => main.gasesFrom(sample),
    debyeHuckelAt: () => main.debyeHuckelAt(25),
    debyeHuckelExtendedOf: () => main.debyeHuckelExtendedOf({ sizes: { 'H+': 9 } }),
    daviesOf: () => main.daviesOf({ linear: 0.2 }),
  };

  test.each(Object.entries(results))('%s is frozen, deeply', (name, make) => {
    let result: unknown;
    try {
      result = make();
    } catch (error) {
      // the arguments above must be good ones
      expect((error as Error).message).toBe('');
    }
    expect(changeable(result, name)).toEqual([]);
  });
});

test('nothing that a caller does to a result reorders or changes a later answer', () => {
  expect(() => (titration.equivalencePoints as unknown[]).reverse()).toThrow(TypeError);
  expect(() => Object.assign(acids.acetic.steps[0] as object, { pKa: 3 })).toThrow(TypeError);
  expect(() => Object.assign(main.bufferDefaults, { dropSize: 1 })).toThrow(TypeError);
});
