import { acids, defineReagent, gasesFrom, makeSolution, mix, type Protolyte, reagents } from 'protolysis';
import { describe, expect, test } from 'vitest';

const sodium = { formula: 'Na+', charge: 1 };
const salt = (protolyte: Protolyte, cations: number) =>
  defineReagent({
    id: `sodium salt of ${protolyte.id}`,
    name: `sodium salt of ${protolyte.name}`,
    protolytes: [{ protolyte, count: 1 }],
    ions: [{ ion: sodium, count: cations }],
  });
const cyanide = salt(acids.hydrocyanic, 1);
const sulfide = salt(acids.hydrogenSulfide, 2);
const sulfite = salt(acids.sulfurous, 2);
const nitrite = salt(acids.nitrous, 1);
const hypochlorite = salt(acids.hypochlorous, 1);
const { ammoniumChloride, hydrochloricAcid, perchloricAcid, sodiumCarbonate, sodiumHydroxide } = reagents;

const of = (...contents: Parameters<typeof makeSolution>[0]['contents']) =>
  gasesFrom(makeSolution({ contents }));
const names = (found: ReturnType<typeof gasesFrom>) => found.map(({ name }) => name);

describe('a gas is named in the mixture that sets it free, and not in the salt that is kept from it', () => {
  test.each([
    ['ammonia', ammoniumChloride, sodiumHydroxide],
    ['sulfur dioxide', sulfite, hydrochloricAcid],
    ['nitrogen oxides, counted as nitrous acid,', nitrite, hydrochloricAcid],
    ['chlorine', hypochlorite, hydrochloricAcid],
    ['carbon dioxide', sodiumCarbonate, hydrochloricAcid],
  ])('%s', (name, reagent, other) => {
    expect(of({ reagent, molar: 0.1 })).toEqual([]);
    expect(names(of({ reagent, molar: 0.1 }, { reagent: other, molar: 0.2 }))).toEqual([name]);
  });

  test.each([
    ['hydrogen cyanide', cyanide],
    ['hydrogen sulfide', sulfide],
  ])('%s, which only strong alkali holds back', (name, reagent) => {
    expect(of({ reagent, molar: 0.1 }, { reagent: sodiumHydroxide, molar: 1 })).toEqual([]);
    expect(names(of({ reagent, molar: 0.1 }, { reagent: hydrochloricAcid, molar: 0.2 }))).toEqual([name]);
  });
});

test('ammonia at 0.1 mol/L stands under 0.1/59 atm, less the share that water protonates', () => {
  const [gas] = of({ reagent: ammoniumChloride, molar: 0.1 }, { reagent: sodiumHydroxide, molar: 0.1 });
  // NH3 + H2O ⇌ NH4+ + OH−: x² = Kb·(0.1 − x)
  const Kb = 10 ** (9.245 - 13.995);
  const x = (-Kb + Math.sqrt(Kb * Kb + 0.4 * Kb)) / 2;
  expect(gas?.atm).toBeCloseTo((0.1 - x) / 59, 8);
  expect(gas?.caution).toContain('2000 ppm');
});

test('a trace below the threshold is not worth a caution', () => {
  const ammonia = { reagent: reagents.ammonia, molar: 0.0029 };
  expect(of(ammonia)).toEqual([]); // 50 ppm times 59 mol/(L atm) is 2.95 mmol/L
  expect(names(of({ ...ammonia, molar: 0.0035 }))).toEqual(['ammonia']);
});

test('chlorine follows from [HClO][H+][Cl-]/K, and chloride raises it', () => {
  const bleach = { reagent: hypochlorite, molar: 0.001 };
  const alone = of(bleach, { reagent: perchloricAcid, molar: 0.0015 });
  const salted = of(
    bleach,
    { reagent: perchloricAcid, molar: 0.0015 },
    { reagent: reagents.sodiumChloride, molar: 0.1 },
  );
  // all of it is HClO, with as much chloride, at 0.5 mmol/L H+
  expect(alone[0]?.molar).toBeCloseTo((0.001 * 0.0005 * 0.001) / 4e-4, 8);
  expect((salted[0]?.molar as number) / (alone[0]?.molar as number)).toBeCloseTo(101, 0);
});

test('chlorine is no more than the hypochlorite there is', () => {
  const [gas] = of({ reagent: hypochlorite, molar: 0.5 }, { reagent: hydrochloricAcid, molar: 5 });
  expect(gas).toMatchObject({ name: 'chlorine', molar: expect.closeTo(0.5, 12) });
});

test('hypochlorite with ammonium gives chloramines', () => {
  const found = of({ reagent: hypochlorite, molar: 0.01 }, { reagent: ammoniumChloride, molar: 0.01 });
  expect(names(found)).toContain('chloramines');
});

test('it is the mixture that counts, not what it was poured from', () => {
  const base = makeSolution({ mL: 10, contents: [{ reagent: sodiumHydroxide, molar: 0.1 }] });
  const acid = makeSolution({ mL: 10, contents: [{ reagent: ammoniumChloride, molar: 0.1 }] });
  expect([...gasesFrom(base), ...gasesFrom(acid)]).toEqual([]);
  expect(names(gasesFrom(mix(acid, base)))).toEqual(['ammonia']);
});

test('each says where its numbers come from', () => {
  for (const { sources } of of(
    { reagent: hypochlorite, molar: 0.1 },
    { reagent: ammoniumChloride, molar: 0.1 },
    { reagent: hydrochloricAcid, molar: 0.2 },
  ))
    expect(sources.length).toBeGreaterThan(0);
});

test('strong acids, strong bases and water set nothing free', () => {
  expect(of({ reagent: hydrochloricAcid, molar: 1 })).toEqual([]);
  expect(of()).toEqual([]);
});
