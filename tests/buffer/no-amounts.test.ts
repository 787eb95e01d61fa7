import {
  acids,
  type BufferRequest,
  davies,
  type ImpossibleBuffer,
  makeSolution,
  pHOf,
  prepareBuffer,
  type Reagent,
  reagents,
} from 'protolysis';
import { describe, expect, test } from 'vitest';

const { aceticAcid, hydrochloricAcid, sodiumAcetate, sodiumChloride, tris } = reagents;
const stock = (reagent: Reagent, molar: number) => makeSolution({ contents: [{ reagent, molar }] });
const refused = (request: BufferRequest): ImpossibleBuffer => {
  const answer = prepareBuffer(request);
  if (answer.status === 'prepared') throw new Error('a recipe where there should be none');
  return answer;
};
/** The pH of mmol of each in 200 mL. */
const in200 = (...contents: [Reagent, number][]) =>
  pHOf({ mL: 200, contents: contents.map(([reagent, mmol]) => ({ reagent, mmol })) });

describe('the stocks are in the way, not the chemistry', () => {
  test('of the second: what fills up the volume is as far as it goes', () => {
    const from = [stock(tris, 0.2), stock(hydrochloricAcid, 0.2)] as const;
    const { because, reason, reachable } = refused({ pH: 7.4, molar: 0.15, mL: 200, from });
    expect(because).toBe('too-dilute');
    expect(reason).toBe(
      '0.2 mol/L Tris and 0.2 mol/L hydrochloric acid would fill more than 200 mL: take more concentrated stocks, or a lower concentration',
    );
    // 30 mmol of Tris in 150 mL leave 50 mL for the acid
    expect(reachable?.from).toBeCloseTo(in200([tris, 30], [hydrochloricAcid, 10]), 10);
    expect(reachable?.to).toBeCloseTo(in200([tris, 30]), 10);
  });

  test('of the first, an acid or a base: what fills up the volume is where it begins', () => {
    // 20 mmol are 400 mL of 0.05 mol/L: at most 200 mL go in, and the other salt brings the other 10
    const middle = in200([aceticAcid, 10], [sodiumAcetate, 10]);
    const request = { molar: 0.1, mL: 200 };
    const acid = { ...request, from: [stock(aceticAcid, 0.05), sodiumAcetate] } as const;
    const base = { ...request, from: [stock(sodiumAcetate, 0.05), aceticAcid] } as const;
    for (const [from, pH] of [
      [acid, middle - 0.5],
      [base, middle + 0.5],
    ] as const) {
      const { because, reachable } = refused({ ...from, pH });
      expect(because).toBe('too-dilute');
      expect(from === acid ? reachable?.from : reachable?.to).toBeCloseTo(middle, 10);
    }
    expect(refused({ ...acid, pH: 2 }).because).toBe('out-of-reach');
    expect(refused({ ...base, pH: 11 }).because).toBe('out-of-reach');
    for (const from of [acid, base])
      for (const pH of from === acid ? [middle + 0.1, 6, 8] : [middle - 0.1, 4, 3.2])
        expect(prepareBuffer({ ...from, pH })).toMatchObject({
          status: 'prepared',
          pH: expect.closeTo(pH, 10),
        });
  });

  test('up to the very end of what they would give', () => {
    const pH = in200([aceticAcid, 128]);
    const from = [stock(aceticAcid, 0.5), sodiumAcetate] as const;
    expect(refused({ pH, molar: 0.64, mL: 200, from }).because).toBe('too-dilute');
  });

  test('beyond that it is the chemistry', () => {
    const from = [stock(tris, 0.2), stock(hydrochloricAcid, 0.2)] as const;
    expect(refused({ pH: 0.5, molar: 0.15, mL: 200, from })).toMatchObject({
      because: 'out-of-reach',
      reason: expect.stringContaining('even the whole volume of 0.2 mol/L hydrochloric acid is not enough'),
    });
  });
});

describe('the reason', () => {
  const from = [aceticAcid, sodiumAcetate] as const;
  const [least, most] = [in200([aceticAcid, 20]), in200([sodiumAcetate, 20])];

  test.each([
    [least - 0.0004, 4],
    [most + 0.0004, 4],
    [least - 3e-7, 7],
    [most + 0.02, 2],
  ])('shows as many decimals as tell the pH from the nearer end, %#', (pH, decimals) => {
    const asked = decimals > 2 ? pH.toFixed(decimals) : `${Number(pH.toPrecision(4))}`;
    expect(refused({ pH, molar: 0.1, mL: 200, from }).reason).toMatch(
      `these reach pH ${least.toFixed(decimals)} to ${most.toFixed(decimals)}, not ${asked}:`,
    );
  });

  test('shows a round pH as it was asked for', () =>
    expect(refused({ pH: 10, molar: 0.1, mL: 200, from }).reason).toMatch(/, not 10: /));

  test('names as neither acid nor base only what is neither', () => {
    const second = (other: BufferRequest['from'][1], pH: number) =>
      refused({ pH, molar: 0.1, mL: 200, protolyte: acids.acetic, from: [stock(sodiumAcetate, 1), other] })
        .reason;
    const neither = /neither acid nor base/;
    expect(second(makeSolution({ mL: 10, contents: [] }), 4)).toMatch(/: water is neither acid nor base/);
    expect(second(sodiumChloride, 4)).toMatch(/: sodium chloride is neither acid nor base/);
    const saltAndAcid = makeSolution({
      contents: [
        { reagent: sodiumChloride, molar: 1 },
        { reagent: hydrochloricAcid, molar: 0.01 },
      ],
    });
    expect(second(saltAndAcid, 3)).not.toMatch(neither);
    expect(second(tris, 3)).not.toMatch(neither);
    expect(second(tris, 3)).toMatch(/negative amount of Tris/);
  });
});

test('two stocks that are the same to the last bit are both at the pH they have', () => {
  const from = [stock(sodiumChloride, 1), stock(reagents.potassiumChloride, 1)] as const;
  expect(prepareBuffer({ pH: pHOf({ mL: 1, contents: [] }), mL: 200, from }).status).toBe('prepared');
});

describe('with an ionic strength', () => {
  const from = [aceticAcid, sodiumAcetate] as const;
  const request: BufferRequest = { pH: 4.7, molar: 0.1, mL: 200, from };

  test('a pH out of reach is still that', () =>
    expect(refused({ ...request, pH: 10, ionicStrength: 0.2 }).because).toBe('out-of-reach'));

  test.each([undefined, davies])(
    'its own needs no salt, and less, but for rounding, is refused',
    (activity) => {
      const conditions = activity && { activity };
      const bare = prepareBuffer({ ...request, ...(conditions && { conditions }) });
      if (bare.status === 'impossible') return expect.unreachable(bare.reason);
      const at = (ionicStrength: number) =>
        prepareBuffer({ ...request, ionicStrength, ...(conditions && { conditions }) });
      for (const share of [1, 1 - 5e-13])
        expect(at(bare.ionicStrength * share)).toMatchObject({ status: 'prepared', parts: { length: 2 } });
      expect(at(bare.ionicStrength * (1 - 1e-9))).toMatchObject({
        because: 'ionic-strength',
        leastIonicStrength: bare.ionicStrength,
      });
    },
  );

  test('calcium chloride makes it three times its concentration', () => {
    const salt = reagents.calciumChloride;
    const recipe = prepareBuffer({ ...request, ionicStrength: 0.5, salt });
    if (recipe.status === 'impossible') return expect.unreachable(recipe.reason);
    const mmolOf = (id: string) =>
      recipe.solution.contents.find(({ reagent }) => reagent.id === id)?.mmol as number;
    // the ions of acetate are as many as of sodium and H+ together: c(Na) + [H+]
    const own = mmolOf('sodiumAcetate') / 200 + 10 ** -4.7;
    expect(own + (3 * mmolOf('calciumChloride')) / 200).toBeCloseTo(0.5, 9);
  });
});
