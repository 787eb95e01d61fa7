import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as acids from '../../src/acids.js';
import { prepareBuffer } from '../../src/buffer/prepare-buffer.js';
import { equilibrate } from '../../src/equilibrium/equilibrate.js';
import * as indicators from '../../src/indicators.js';
import { InputError } from '../../src/input/input-error.js';
import * as reagents from '../../src/reagents.js';
import { cautionsOf, lastCaution } from '../../src/safety/cautions-of.js';
import type { Handled } from '../../src/safety/read-handled.js';
import { makeSolution } from '../../src/solution/make-solution.js';
import { titrate } from '../../src/titration/titrate.js';
import { answerOrInputError, hostile, spoiled } from '../property/hostile.js';

const { hydrocyanic } = acids;
const { methylYellow } = indicators;
const { hydrochloricAcid, sodiumCarbonate, sodiumChloride, sodiumHydroxide } = reagents;
const sample = { mL: 50, contents: [{ reagent: sodiumCarbonate, mmol: 2 }] };
const titrant = { mL: 1000, contents: [{ reagent: hydrochloricAcid, mmol: 100 }] };

test('of any indicator of the catalogue are its own, of a mixed one too', () => {
  for (const indicator of Object.values(indicators))
    expect(cautionsOf(indicator).slice(0, 1)).toEqual([
      indicator.hazard === undefined ? lastCaution : `${indicator.name}: ${indicator.hazard}`,
    ]);
});

test('each caution once, with the name of what it is about, and the deferring line last', () => {
  const cautions = cautionsOf([sample, titrant, sodiumCarbonate]);
  expect(cautions).toEqual([
    `sodium carbonate: ${sodiumCarbonate.hazard}`,
    'hydrochloric acid, 0.1 mol/L (about 0.36 % by mass): below the limits, which begin at 10 % by mass (irritating to skin, eyes and airways); rinse splashes off all the same.',
    lastCaution,
  ]);
});

test('what has no caution of its own, and pure water, still get the deferring line', () => {
  expect(cautionsOf(sodiumChloride)).toEqual([lastCaution]);
  expect(cautionsOf({ contents: [] })).toEqual([lastCaution]);
  expect(cautionsOf([])).toEqual([lastCaution]);
});

test('the deferring line names the safety data sheet, local rules and a qualified supervisor', () => {
  for (const words of ['safety data sheet', 'local rules', 'qualified supervisor'])
    expect(lastCaution).toContain(words);
});

test('concentrated acids say to pour acid into water, and alkalis that the eyes are in danger', () => {
  const { nitricAcid, perchloricAcid, sulfuricAcid, phosphoricAcid } = reagents;
  for (const acid of [hydrochloricAcid, nitricAcid, perchloricAcid, sulfuricAcid, phosphoricAcid])
    expect(cautionsOf(acid).join()).toContain('never water into acid');
  expect(cautionsOf(sodiumHydroxide).join()).toContain('eyes');
});

test('an indicator has its own', () => {
  expect(cautionsOf([methylYellow, sodiumChloride])).toEqual([
    `methyl yellow (dimethyl yellow): ${methylYellow.hazard}`,
    lastCaution,
  ]);
});

test('a protolyte has its own, and a reagent without words of its own has those of its protolytes', () => {
  const own = `${hydrocyanic.name}: ${hydrocyanic.hazard}`;
  expect(cautionsOf(hydrocyanic)).toEqual([own, lastCaution]);
  const cyanide = {
    id: 'potassiumCyanide',
    name: 'potassium cyanide',
    protolytes: [{ protolyte: hydrocyanic, count: 1 }],
    ions: [{ ion: { formula: 'K+', charge: 1 }, count: 1 }],
  };
  expect(cautionsOf(cyanide)).toEqual([own, lastCaution]);
});

describe('of a reagent with limits', () => {
  const of = (molar: number) =>
    cautionsOf(makeSolution({ contents: [{ reagent: hydrochloricAcid, molar }] }))[0];

  test('the bottle has all of them, and its words', () => {
    expect(cautionsOf(hydrochloricAcid)[0]).toBe(
      'hydrochloric acid: Corrosive from 25 % by mass, irritating to skin, eyes and airways from 10 %. The concentrated acid fumes: open it in a fume cupboard. Pour acid into water, never water into acid.',
    );
  });

  test.each([
    [0.01, /0\.036 % by mass\): below the limits, .* 10 % by mass \(.*\); rinse/],
    [2.7, /9\.8 % by mass\): below the limits/],
    [2.8, /10 % by mass\): Irritating .* fume cupboard/],
    [12, /Corrosive\. The concentrated acid fumes/],
  ])('a solution of %d mol/L has those that it is above', (molar, words) => {
    expect(of(molar)).toMatch(words);
  });

  // CLP, annex I, tables 3.2.3 and 3.3.3: a corrosive substance irritates from 1 % on and harms eyes from 3 % on,
  // unless annex VI has limits of its own for that.
  test.each([
    [reagents.nitricAcid, 0.1, /below the limits, which begin at 1 %/],
    [reagents.nitricAcid, 0.3, /1\.9 % by mass\): Irritating to skin and eyes/],
    [reagents.nitricAcid, 0.5, /3\.2 % by mass\): Irritating to skin and a danger to the eyes\. /],
    [reagents.nitricAcid, 1, /6\.3 % by mass\): Corrosive/],
    [reagents.ammonia, 0.1, /below the limits, which begin at 1 %/],
    [reagents.ammonia, 1, /1\.7 % by mass\): Irritating to skin and eyes/],
    [reagents.ammonia, 2, /3\.4 % by mass\): Irritating to skin and a danger to the eyes\. /],
  ])('general limits hold where the substance has none: %#', (reagent, molar, words) => {
    expect(cautionsOf(makeSolution({ contents: [{ reagent, molar }] }))[0]).toMatch(words);
  });

  test('a dilute solution says nothing of fumes or corrosion', () => {
    expect(of(0.01)).not.toMatch(/fume|corrosive/i);
  });

  test('the recipe that it is made by keeps the words of the bottle', () => {
    const recipe = { mL: 1000, contents: [{ reagent: hydrochloricAcid, molar: 0.01 }] };
    expect(cautionsOf(recipe)).toEqual(cautionsOf(hydrochloricAcid));
  });
});

// A 50 % solution is as hot to dilute as many a concentrated acid.
test.each([[sodiumHydroxide], [reagents.potassiumHydroxide]])(
  'a strong solution of a hydroxide gets hot in water, not its solid alone',
  (reagent) => {
    const strong = makeSolution({ contents: [{ reagent, molar: 15 }] });
    expect(cautionsOf(strong)[0]).toMatch(/strong solutions get hot in water: add them to cold water/);
  },
);

test('plain words of a reagent stand as they are at any concentration', () => {
  expect(cautionsOf(sample)[0]).toBe(`sodium carbonate: ${sodiumCarbonate.hazard}`);
});

test('what is in a solution in name only has no caution', () => {
  expect(cautionsOf({ mL: 1, contents: [{ reagent: hydrochloricAcid, mmol: 0 }] })).toEqual([lastCaution]);
});

test('a titration and its setup count analyte and titrant as mixed, wherever the gas is at its worst', () => {
  const setup = { analyte: sample, titrant };
  const cautions = cautionsOf(setup);
  expect(cautionsOf([sample, titrant]).join()).not.toContain('Carbon dioxide');
  expect(cautions.filter((one) => one.startsWith('Carbon dioxide can escape'))).toHaveLength(1);
  expect(cautionsOf(titrate(setup))).toEqual(cautions);
});

test('a recipe names what comes from its bottles, and the gas of what it makes', () => {
  const contents = [
    { reagent: reagents.ammoniumChloride, grams: 5.35 },
    { reagent: sodiumHydroxide, molar: 0.1 },
  ];
  const [salt, alkali, gas, last] = cautionsOf({ mL: 1000, contents });
  expect([salt, alkali, gas]).toEqual([
    expect.stringMatching(/^ammonium chloride: /),
    expect.stringMatching(/^sodium hydroxide: /),
    expect.stringMatching(/^Ammonia can escape at pH/),
  ]);
  expect(last).toBe(lastCaution);
  expect(cautionsOf(equilibrate(makeSolution({ mL: 1000, contents })))).toContain(gas);
});

test('a recipe for a buffer has the cautions of its parts and of the finished buffer', () => {
  const recipe = prepareBuffer({
    pH: 9.2,
    molar: 0.1,
    mL: 500,
    from: [reagents.ammoniumChloride, sodiumHydroxide],
  });
  if (recipe.status !== 'prepared') return expect.unreachable(recipe.reason);
  expect(recipe.cautions).toEqual(cautionsOf(recipe));
  expect(recipe.cautions.join()).toMatch(/Ammonia can escape/);
});

test('a fault is told with its place in a setup', () => {
  const bad = { setup: { analyte: sample, titrant: { mL: -1, contents: [] } } } as unknown as Handled;
  expect(() => cautionsOf([sodiumChloride, bad])).toThrow('handled[1].setup.titrant.mL');
});

test('a slip is not taken for something harmless', () => {
  expect(() => cautionsOf({ content: [] } as unknown as Handled)).toThrow('content');
  expect(() => cautionsOf([{ contents: [{ mmol: 1 }] }] as unknown as Handled[])).toThrow(
    'handled[0].contents[0].reagent',
  );
});

test('a list of a million bad items ends with a hundred faults', () => {
  const error = faultOf(() => cautionsOf({ contents: new Array(1e6) }));
  expect(error.issues.length).toBe(100);
});

test('of anything is a list that ends with the deferring line, or an InputError', () => {
  fc.assert(
    fc.property(
      fc.oneof(hostile, spoiled(titrant), spoiled([sample, titrant]), spoiled({ analyte: sample, titrant })),
      (value) => {
        const cautions = answerOrInputError(() => cautionsOf(value as Handled));
        if (cautions !== undefined) expect(cautions.at(-1)).toBe(lastCaution);
      },
    ),
    { numRuns: 300 },
  );
});

function faultOf(call: () => unknown): InputError {
  try {
    call();
  } catch (error) {
    if (error instanceof InputError) return error;
  }
  throw new Error('no InputError');
}

describe('substances of very high concern', () => {
  const listed = /candidate list of substances of very high concern \(REACH\).*See the safety data sheet\.$/;

  test.each([
    reagents.boricAcid,
    reagents.borax,
    reagents.disodiumTetraborate,
    acids.hydrazinium,
    acids.chromic,
    acids.arsenic,
    acids.ethylenediammonium,
    indicators.phenolphthalein,
    indicators.congoRed,
  ])('are named: $id', (substance) =>
    expect(cautionsOf(substance).filter((caution) => listed.test(caution)).length).toBe(1),
  );

  test('are not named where a substance is not on the list', () =>
    expect(cautionsOf([reagents.sodiumCarbonate, indicators.methylOrange]).join(' ')).not.toMatch(/REACH/));

  // Half and twice the 0.1 % by mass from which a mixture has to name them.
  test.each([
    [0.05, 0],
    [0.2, 1],
  ])('in a solution of %d % by mass are named %d times', (percent, times) => {
    const solution = makeSolution({ mL: 100, contents: [{ reagent: reagents.boricAcid, grams: percent }] });
    expect(cautionsOf(solution).filter((caution) => listed.test(caution)).length).toBe(times);
  });
});

test('several things count as a list of them', () => {
  const { sodiumCarbonate, hydrochloricAcid } = reagents;
  expect(cautionsOf(sodiumCarbonate, hydrochloricAcid)).toEqual(
    cautionsOf([sodiumCarbonate, hydrochloricAcid]),
  );
  expect(cautionsOf(sodiumCarbonate, hydrochloricAcid).length).toBeGreaterThan(
    cautionsOf(sodiumCarbonate).length,
  );
  expect(() => cautionsOf(sodiumCarbonate, 3 as never)).toThrow('handled[1]');
});
