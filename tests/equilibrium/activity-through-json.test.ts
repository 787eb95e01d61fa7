import {
  batesGuggenheim,
  davies,
  daviesOf,
  debyeHuckelExtended,
  debyeHuckelExtendedOf,
  debyeHuckelLimiting,
  equilibrate,
  guntelberg,
  ideal,
  indicators,
  makeSolution,
  pHOf,
  prepareBuffer,
  rankIndicators,
  reagents,
  titrate,
} from 'protolysis';
import { exactPH, davies as lawOfDavies, makeSolution as makeExactSolution } from 'protolysis/exact';
import { describe, expect, test } from 'vitest';

const throughJson = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;
const sample = makeSolution({ mL: 20, contents: [{ reagent: reagents.sodiumCarbonate, molar: 0.05 }] });
const acid = makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] });

describe('a law of activity that came through JSON', () => {
  test.each([
    ideal,
    debyeHuckelLimiting,
    guntelberg,
    batesGuggenheim,
    davies,
    daviesOf({ linear: 0.2 }),
    debyeHuckelExtended,
    debyeHuckelExtendedOf({ sizes: { 'H+': 9 }, otherwise: 4 }),
  ])('is as good as the law: $name', (activity) => {
    for (const celsius of [25, 40])
      expect(pHOf(sample, throughJson({ activity, celsius }))).toBe(pHOf(sample, { activity, celsius }));
  });

  test('is known as ideal where it is, so that nothing is brought to zero strength and nothing noted', () => {
    const copy = throughJson(ideal);
    expect(copy).not.toBe(ideal);
    const edta = makeSolution({ contents: [{ reagent: reagents.disodiumEdtaDihydrate, molar: 0.01 }] });
    expect(equilibrate(edta, { activity: copy }).notes).toEqual(equilibrate(edta).notes);
  });

  test('is refused beside functions of another law, which would be lost in silence', () => {
    const odd = { ...davies, log10Gamma: () => 0 };
    expect(() => pHOf(sample, { activity: odd })).toThrow(/the function of the law, or no law beside it/);
  });

  test('is one for the exact entry too', () => {
    const solution = makeExactSolution({ contents: [{ reagent: reagents.sodiumCarbonate, molar: '0.05' }] });
    const [one, other] = [lawOfDavies, throughJson(davies)].map(
      (activity) => exactPH(solution, { digits: 30, activity: activity as typeof lawOfDavies }).pH,
    );
    expect(String(other)).toBe(String(one));
  });

  test('is refused with its faults where its data are damaged', () => {
    const activity = { ...throughJson(davies), law: { name: 'x', b: Number.NaN } };
    expect(() => pHOf(sample, { activity: activity as never })).toThrow(/activity\.law\.b is NaN/);
  });
});

describe('what survives a round trip through JSON', () => {
  test('the setup of a titration', () => {
    const titration = titrate({
      analyte: sample,
      titrant: acid,
      conditions: { activity: davies, celsius: 30 },
    });
    const again = titrate(throughJson(titration.setup));
    expect(again.pHAt(7)).toBe(titration.pHAt(7));
    expect(again.equivalencePoints).toEqual(titration.equivalencePoints);
  });

  test('a request for a recipe', () => {
    const request = {
      pH: 7.2,
      molar: 0.05,
      mL: 500,
      from: [
        { reagent: reagents.sodiumDihydrogenPhosphate, purity: 1 },
        { reagent: reagents.disodiumHydrogenPhosphate, purity: 1 },
      ],
      conditions: { activity: davies },
    } as const;
    expect(prepareBuffer(throughJson(request))).toEqual(prepareBuffer(request));
  });

  test('a request for a ranking', () => {
    const titration = titrate({ analyte: sample, titrant: acid });
    const request = [Object.values(indicators).slice(0, 4), { tolerance: 0.1 }] as const;
    expect(rankIndicators(titration, ...throughJson(request))).toEqual(rankIndicators(titration, ...request));
  });
});
