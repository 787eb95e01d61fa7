import fc from 'fast-check';
import { expect, test } from 'vitest';
import * as acids from '../../src/acids.js';
import { printFormula } from '../../src/substance/print-formula.js';
import { answerOrInputError, hostile } from '../property/hostile.js';

// Sub- and superscripts as IUPAC writes formulas: N. G. Connelly et al., Nomenclature of Inorganic Chemistry (2005), IR-4.
test.each([
  ['HCO3-', 'HCO₃⁻'],
  ['CO3(2-)', 'CO₃²⁻'],
  ['SO4(2-)', 'SO₄²⁻'],
  ['NH4+', 'NH₄⁺'],
  ['Ca(2+)', 'Ca²⁺'],
  ['Ca(2+)(aq)', 'Ca²⁺(aq)'],
  ['CO2(aq)', 'CO₂(aq)'],
  ['H+', 'H⁺'],
  ['S(2-)', 'S²⁻'],
  ['B(OH)4-', 'B(OH)₄⁻'],
  ['SiO2(OH)2(2-)', 'SiO₂(OH)₂²⁻'],
  ['(HOCH2)3CNH3+', '(HOCH₂)₃CNH₃⁺'],
  ['H6EDTA(2+)', 'H₆EDTA²⁺'],
  ['HEPES-', 'HEPES⁻'],
  ['C12H22O11', 'C₁₂H₂₂O₁₁'],
  ['Na2CO3.10H2O', 'Na₂CO₃·10H₂O'],
  ['Na2CO3*10H2O', 'Na₂CO₃·10H₂O'],
  ['K2CO3.1.5H2O', 'K₂CO₃·1.5H₂O'],
  ['K4[Fe(CN)6]·3H2O', 'K₄[Fe(CN)₆]·3H₂O'],
])('%s prints as %s', (plain, printed) => {
  expect(printFormula(plain)).toBe(printed);
});

test.each(['Tris', 'acid 3', 'cis-butenedioic acid', '10', '-', '1.5 mol/L', 'CO₃²⁻'])(
  'the label %s stays as it is',
  (label) => {
    expect(printFormula(label)).toBe(label);
  },
);

test('no two species of the catalogue that differ in plain notation look alike in print', () => {
  const plain = new Set(Object.values(acids).flatMap(({ species }) => species.map(({ formula }) => formula)));
  expect(new Set([...plain].map(printFormula)).size).toBe(plain.size);
});

test('anything prints as a text or is an InputError, and print is left as it is', () => {
  fc.assert(
    fc.property(hostile, (value) => {
      const printed = answerOrInputError(() => printFormula(value as string));
      expect(printed === undefined || typeof printed === 'string').toBe(true);
    }),
  );
  for (const { species } of Object.values(acids))
    for (const { formula } of species)
      expect(printFormula(printFormula(formula))).toBe(printFormula(formula));
});
