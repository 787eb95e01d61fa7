import { air, reagents, titrate } from 'protolysis';
import { describe, expect, test } from 'vitest';
import { acidWith } from '../../make.js';
import { beaker, burette, titrationOf } from '../beakers.js';

const r = reagents;
const one = acidWith('HA', 0, [5]).reagent;
const two = acidWith('HB', 0, [5]).reagent;

describe('the step that a point completes, printed', () => {
  test.each([
    ['strong acid, strong base', [[r.hydrochloricAcid, 0.1]], [[r.sodiumHydroxide, 0.1]], ['H⁺ + OH⁻ → H₂O']],
    ['strong base, strong acid', [[r.sodiumHydroxide, 0.1]], [[r.hydrochloricAcid, 0.1]], ['H⁺ + OH⁻ → H₂O']],
    [
      'weak acid, strong base',
      [[r.aceticAcid, 0.1]],
      [[r.sodiumHydroxide, 0.1]],
      ['CH₃COOH + OH⁻ → CH₃COO⁻ + H₂O'],
    ],
    ['weak base, strong acid', [[r.ammonia, 0.1]], [[r.hydrochloricAcid, 0.1]], ['NH₃ + H⁺ → NH₄⁺']],
    ['weak acid, weak base', [[r.aceticAcid, 0.1]], [[r.ammonia, 0.1]], ['CH₃COOH + NH₃ → CH₃COO⁻ + NH₄⁺']],
    ['weak base, weak acid', [[r.ammonia, 0.1]], [[r.aceticAcid, 0.1]], ['NH₃ + CH₃COOH → NH₄⁺ + CH₃COO⁻']],
    [
      'carbonate, strong acid',
      [[r.sodiumCarbonate, 0.1]],
      [[r.hydrochloricAcid, 0.1]],
      ['CO₃²⁻ + H⁺ → HCO₃⁻', 'HCO₃⁻ + H⁺ → CO₂(aq) + H₂O'],
    ],
    [
      'the same names where the analyte is the more acidic, and the titrant dilutes it',
      [
        [r.sodiumHydrogenSulfate, 5],
        [r.sodiumSulfate, 0.01],
      ],
      [[r.hydrochloricAcid, 0.1]],
      ['SO₄²⁻ + H⁺ → HSO₄⁻'],
    ],
    [
      'phosphoric acid, strong base',
      [[r.phosphoricAcid, 0.1]],
      [[r.sodiumHydroxide, 0.1]],
      ['H₃PO₄ + OH⁻ → H₂PO₄⁻ + H₂O', 'H₂PO₄⁻ + OH⁻ → HPO₄²⁻ + H₂O', 'HPO₄²⁻ + OH⁻ → PO₄³⁻ + H₂O'],
    ],
    [
      'strong and weak acid, strong base',
      [
        [r.hydrochloricAcid, 0.05],
        [r.aceticAcid, 0.05],
      ],
      [[r.sodiumHydroxide, 0.1]],
      ['H⁺ + OH⁻ → H₂O', 'CH₃COOH + OH⁻ → CH₃COO⁻ + H₂O'],
    ],
    [
      'strong base, weak acid',
      [[r.sodiumHydroxide, 0.1]],
      [[r.aceticAcid, 0.1]],
      ['OH⁻ + CH₃COOH → CH₃COO⁻ + H₂O'],
    ],
    [
      'a diprotic titrant gives both protons, then one',
      [[r.sodiumHydroxide, 0.1]],
      [[r.oxalicAcid, 0.1]],
      ['2 OH⁻ + H₂C₂O₄ → C₂O₄²⁻ + 2 H₂O', 'C₂O₄²⁻ + H₂C₂O₄ → 2 HC₂O₄⁻'],
    ],
    [
      'a diprotic titrant into a diprotic base',
      [[r.sodiumCarbonate, 0.1]],
      [[r.oxalicAcid, 0.1]],
      [
        '2 CO₃²⁻ + H₂C₂O₄ → 2 HCO₃⁻ + C₂O₄²⁻',
        '2 HCO₃⁻ + H₂C₂O₄ → 2 CO₂(aq) + C₂O₄²⁻ + 2 H₂O',
        'C₂O₄²⁻ + H₂C₂O₄ → 2 HC₂O₄⁻',
      ],
    ],
    [
      'carbonate poured into strong acid',
      [[r.hydrochloricAcid, 0.1]],
      [[r.sodiumCarbonate, 0.1]],
      ['2 H⁺ + CO₃²⁻ → CO₂(aq) + H₂O', 'CO₂(aq) + CO₃²⁻ + H₂O → 2 HCO₃⁻'],
    ],
    [
      'a salt that is an acid',
      [[r.sodiumHydroxide, 0.1]],
      [[r.potassiumHydrogenPhthalate, 0.1]],
      ['OH⁻ + HC₈H₄O₄⁻ → C₈H₄O₄²⁻ + H₂O'],
    ],
    [
      'sulfuric acid is strong in its first step as titrant too',
      [[r.sodiumCarbonate, 0.1]],
      [[r.sulfuricAcid, 0.1]],
      ['CO₃²⁻ + H⁺ → HCO₃⁻', 'HCO₃⁻ + H⁺ → CO₂(aq) + H₂O', 'SO₄²⁻ + H⁺ → HSO₄⁻'],
    ],
    [
      'a carbonated base is first of all a strong one',
      [[r.hydrochloricAcid, 0.1]],
      [
        [r.sodiumHydroxide, 0.098],
        [r.sodiumCarbonate, 0.001],
      ],
      ['H⁺ + OH⁻ → H₂O', 'CO₂(aq) + OH⁻ → HCO₃⁻', 'HCO₃⁻ + OH⁻ → CO₃²⁻ + H₂O'],
    ],
    [
      'a weak acid is named by its own pair, not by a stronger acid of the analyte',
      [
        [r.sodiumHydroxide, 0.1],
        [r.sodiumSulfate, 0.05],
      ],
      [[r.aceticAcid, 0.1]],
      ['OH⁻ + CH₃COOH → CH₃COO⁻ + H₂O'],
    ],
    [
      'a weak acid half neutralised gives protons still',
      [[r.sodiumHydroxide, 0.1]],
      [
        [r.aceticAcid, 0.05],
        [r.sodiumAcetate, 0.05],
      ],
      ['OH⁻ + CH₃COOH → CH₃COO⁻ + H₂O'],
    ],
    [
      'a weak acid in a salt that was made in the flask: 0.3 − 0.1 − 0.2 is not 0 in doubles',
      [[r.sodiumHydroxide, 1e-4]],
      [
        [r.aceticAcid, 1e-4],
        [r.sodiumHydroxide, 3e-4],
        [r.hydrochloricAcid, 1e-4],
        [r.nitricAcid, 2e-4],
      ],
      ['OH⁻ + CH₃COOH → CH₃COO⁻ + H₂O'],
    ],
    [
      'where steps tie, that of the analyte is named, not that of traces in the titrant',
      [[two, 0.1]],
      [
        [r.sodiumHydroxide, 0.1],
        [acidWith('HC', 0, [7]).reagent, 1e-16],
      ],
      ['HB(0) + OH⁻ → HB(-1) + H₂O'],
    ],
  ] as const)('%s', (_, analyte, titrant, reactions) => {
    const { equivalencePoints } = titrationOf(analyte, titrant);
    expect(equivalencePoints.map(({ reaction }) => reaction)).toEqual(reactions);
  });

  test('two acids of one pKa are two steps, in the order given', () => {
    const { equivalencePoints } = titrationOf(
      [
        [one, 0.05],
        [two, 0.05],
      ],
      [[r.sodiumHydroxide, 0.1]],
    );
    expect(equivalencePoints.map(({ reaction }) => reaction)).toEqual([
      'HA(0) + OH⁻ → HA(-1) + H₂O',
      'HB(0) + OH⁻ → HB(-1) + H₂O',
    ]);
  });

  test.each([
    [
      'a base is there as the ions of the air',
      r.sodiumHydroxide,
      r.hydrochloricAcid,
      'HCO₃⁻ + H⁺ → CO₂(aq) + H₂O',
    ],
    ['an acid is free, and used up by the base', r.hydrochloricAcid, r.sodiumHydroxide, 'H⁺ + OH⁻ → H₂O'],
  ])('open to the air %s', (_, analyte, titrant, reaction) => {
    const { equivalencePoints } = titrate({
      analyte: beaker([analyte, 0.1]),
      titrant: burette([titrant, 0.1]),
      conditions: { carbonDioxide: air },
    });
    expect(equivalencePoints.map((point) => [point.mL, point.reaction])).toEqual([[20, reaction]]);
  });
});
