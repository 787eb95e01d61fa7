import { makeSolution, mix, pHOf, reagents, type Solution, solutionLimits } from 'protolysis';
import { describe, expect, test } from 'vitest';
import { listed } from '../faults-of.js';
import { throughJSON } from '../json.js';
import { acidWith } from '../make.js';

const acid = makeSolution({ mL: 20, contents: [{ reagent: reagents.aceticAcid, molar: 0.1 }] });
const salt = makeSolution({ mL: 30, contents: [{ reagent: reagents.sodiumAcetate, molar: 0.2 }] });
const water = makeSolution({ mL: 50, contents: [] });

describe('mixing', () => {
  test('adds volumes and amounts', () => {
    const mixture = mix(acid, salt, water, acid);
    expect(mixture.mL).toBe(120);
    expect(mixture.contents.map(({ reagent, mmol }) => [reagent.id, mmol])).toEqual([
      ['aceticAcid', 4],
      ['sodiumAcetate', 6],
    ]);
  });

  test('one solution, mixed with nothing, stays as it is', () => {
    expect(mix(acid)).toEqual(acid);
  });

  test('acid and its salt make the buffer that both ingredients in one beaker make', () => {
    const together = makeSolution({
      mL: 50,
      contents: [
        { reagent: reagents.aceticAcid, mmol: 2 },
        { reagent: reagents.sodiumAcetate, mmol: 6 },
      ],
    });
    expect(mix(acid, salt)).toEqual(together);
    expect(pHOf(mix(acid, salt))).toBe(pHOf(together));
  });

  test('a solution that went through JSON mixes as well', () => {
    expect(mix(throughJSON(acid), salt)).toEqual(mix(acid, salt));
  });

  test('keeps the last digit: ten aliquots of 0.1 mL are 1 mL', () => {
    const drop = makeSolution({ mL: 0.1, contents: [{ reagent: reagents.aceticAcid, mmol: 0.01 }] });
    expect(mix(...Array<Solution>(10).fill(drop))).toMatchObject({ mL: 1, contents: [{ mmol: 0.1 }] });
  });
});

describe('faults', () => {
  const mixing =
    (...solutions: readonly unknown[]) =>
    () =>
      mix(...(solutions as Solution[]));

  test.each([
    ['nothing to mix', mixing(), ['missing solutions']],
    ['a list instead of solutions', mixing([acid, salt]), ['wrong-type solutions[0]']],
    [
      'something that is no solution',
      mixing(acid, null, 'water'),
      ['wrong-type solutions[1]', 'wrong-type solutions[2]'],
    ],
    ['a typing slip in a solution made by hand', mixing({ ...acid, ml: 3 }), ['unknown-key solutions[0].ml']],
    [
      'purity where it is not asked for',
      mixing({ mL: 1, contents: [{ reagent: reagents.aceticAcid, mmol: 1, purity: 0.5 }] }),
      ['unknown-key solutions[0].contents[0].purity'],
    ],
    [
      'an amount that no liquid holds',
      mixing({ mL: 1, contents: [{ reagent: reagents.aceticAcid, mmol: 61 }] }),
      ['out-of-range solutions[0].contents[0].mmol'],
    ],
    ['a volume that is not there', mixing({ contents: [] }), ['missing solutions[0].mL']],
  ])('%s', (_, call, faults) => expect(listed(call)).toEqual(faults));

  test('more than the limit in all', () => {
    const lake = makeSolution({ mL: solutionLimits.mL, contents: [] });
    expect(listed(mixing(lake))).toEqual([]);
    expect(listed(mixing(lake, acid))).toEqual(['out-of-range solutions']);
  });

  test('one id for two acids, beside a wrong volume', () => {
    const [one, other] = [4, 5].map((pKa) =>
      makeSolution({ mL: 10, contents: [{ reagent: acidWith('a', 0, [pKa]).reagent, molar: 0.1 }] }),
    );
    expect(listed(mixing(one, { ...other, mL: -1 }))).toEqual([
      'out-of-range solutions[1].mL',
      'conflict solutions[1].contents[0].reagent.protolytes[0].protolyte',
    ]);
  });
});
