import {
  acids,
  air,
  type BufferRequest,
  makeSolution,
  pHOf,
  prepareBuffer,
  type Reagent,
  reagents,
} from 'protolysis';
import { expect, test } from 'vitest';

const { aceticAcid, hydrochloricAcid, sodiumAcetate, sodiumHydrogenCarbonate, sodiumHydroxide, tris } =
  reagents;
const stock = (reagent: Reagent, molar: number) => makeSolution({ contents: [{ reagent, molar }] });
const notesOf = (request: BufferRequest) => {
  const recipe = prepareBuffer(request);
  if (recipe.status === 'impossible') throw new Error(recipe.reason);
  return recipe.notes;
};

test('says how much is left of the capacity at pH = pKa, in percent', () => {
  // one pair: 4·x/(1 + x)² with x = 10^(pH − pKa), water's share at pH 9.6 below a thousandth of it
  const x = 10 ** (9.6 - 8.072);
  const percent = Math.round((400 * x) / (1 + x) ** 2 + (400 * 10 ** (9.6 - 13.995)) / 0.1);
  expect(notesOf({ pH: 9.6, molar: 0.1, mL: 250, from: [tris, stock(hydrochloricAcid, 1)] })).toEqual([
    `This pH is far from any pKa: the capacity is ${percent} % of what the same concentration has at pH = pKa.`,
  ]);
});

test('two stocks without a concentration are measured against none', () =>
  expect(notesOf({ pH: 9.6, mL: 250, from: [stock(tris, 0.1), stock(hydrochloricAcid, 0.1)] })).toEqual([]));

test('carbon dioxide is told from other acids, however much of them there is', () => {
  expect(notesOf({ pH: 4.756, molar: 0.5, mL: 250, from: [aceticAcid, sodiumAcetate] })).toEqual([]);
  const recipe = prepareBuffer({
    pH: 6.5,
    molar: 0.1,
    mL: 250,
    protolyte: acids.phosphoric,
    from: [stock(reagents.phosphoricAcid, 1), sodiumHydrogenCarbonate],
  });
  if (recipe.status === 'impossible') return expect.unreachable(recipe.reason);
  const carbonate = recipe.solution.contents.find(({ reagent }) => reagent.id === 'sodiumHydrogenCarbonate');
  // pK1 6.35 gives the share of CO2; 0.034 mol/(L·atm), as in the test of a pure carbonate buffer
  const atm = (carbonate?.mmol as number) / 250 / (1 + 10 ** (6.5 - 6.35)) / 0.034;
  const [, told] = /Carbon dioxide would stand at ([\d.]+) atm/.exec(recipe.notes.join()) ?? [];
  expect(Math.abs(Number(told) / atm - 1)).toBeLessThan(0.05); // of two digits
});

test('the air takes nothing from what is not there', () => {
  const conditions = { carbonDioxide: air };
  const pH = pHOf(stock(aceticAcid, 0.1), conditions);
  const request = { molar: 0.1, mL: 1000, protolyte: acids.acetic, conditions };
  expect(notesOf({ ...request, pH, from: [aceticAcid, sodiumHydrogenCarbonate] }).join()).not.toContain(
    'the air',
  );
  expect(notesOf({ ...request, pH: 4.5, from: [aceticAcid, sodiumHydrogenCarbonate] }).join()).toContain(
    'the air',
  );
  expect(notesOf({ ...request, pH: 4.5, from: [aceticAcid, sodiumHydroxide] }).join()).not.toContain(
    'the air',
  );
});
