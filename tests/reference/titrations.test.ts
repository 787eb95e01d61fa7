import { describe, expect, test } from 'vitest';
import { casesOf, relativeTolerance, type TitrationInput, titrationOf, tolerance } from './vectors.js';

interface Case {
  readonly id: string;
  readonly title: string;
  readonly V_max: string;
  readonly input: TitrationInput;
  readonly points: readonly {
    readonly V: string;
    readonly pH: string;
    readonly dpH_dV: string;
    readonly condition: string;
  }[];
  readonly equivalence: readonly { readonly label: string; readonly V: string }[];
  readonly inflections: readonly {
    readonly kind: string;
    readonly V: string;
    readonly pH: string;
    readonly dpH_dV: string;
    readonly condition: string;
  }[];
}

interface Inverse {
  readonly id: string;
  readonly title: string;
  readonly kind: 'volume' | 'addition';
  readonly input: TitrationInput & { readonly target_pH: string };
  readonly answer: { readonly V: string };
  readonly condition: string;
}

/** Group B, all 21 curves with 1293 points: vectors/titrations.json; tolerances as vectors/README.md derives them. */
describe.each(casesOf<Case>('titrations.json'))(
  '$id $title',
  ({ V_max, input, points, equivalence, inflections }) => {
    const titration = titrationOf(input);
    const protons = Math.max(1, ...input.families.map(({ pKa }) => pKa.length));
    const sums = input.families.map(({ pKa }) => pKa.reduce((sum, text) => sum + Math.abs(Number(text)), 0));
    const slopeTolerance = (condition: string, pH: number) =>
      relativeTolerance(condition, pH, protons, [String(Math.max(0, ...sums))]);

    test('pH at each point, one by one and all at once', () => {
      const all = titration.pHs(points.map(({ V }) => Number(V)));
      for (const [index, { V, pH, condition }] of points.entries()) {
        expect(Math.abs(titration.pHAt(Number(V)) - Number(pH))).toBeLessThanOrEqual(
          tolerance(condition, Number(pH)),
        );
        expect(Math.abs((all[index] as number) - Number(pH))).toBeLessThanOrEqual(
          tolerance(condition, Number(pH)),
        );
      }
    });

    test('slope at each point', () => {
      for (const { V, pH, dpH_dV, condition } of points) {
        const error = Math.abs(titration.slopeAt(Number(V)) / Number(dpH_dV) - 1);
        expect(error, `at ${V} mL`).toBeLessThanOrEqual(slopeTolerance(condition, Number(pH)));
      }
    });

    test('every equivalence volume', () => {
      const found = titration.equivalencePoints.map(({ mL }) => mL);
      for (const { V, label } of equivalence) {
        const nearest = Math.min(...found.map((mL) => Math.abs(mL - Number(V))));
        expect(nearest, label).toBeLessThanOrEqual(4 * 2.3e-16 * Math.max(1, Number(V)) * 4);
      }
    });

    test('every inflection, in order', () => {
      const found = titration.inflectionPoints.filter(({ mL }) => mL < Number(V_max));
      expect(found.map(({ kind }) => kind)).toEqual(inflections.map(({ kind }) => kind));
      for (const [index, { V, condition }] of inflections.entries()) {
        const error = Math.abs((found[index]?.mL ?? Number.NaN) - Number(V));
        expect(error, `at ${V} mL`).toBeLessThanOrEqual(tolerance(condition, Number(V)));
      }
    });
  },
);

/** Group E, the ideal volumes: vectors/inverse.json. */
describe.each(casesOf<Inverse>('inverse.json').filter(({ kind }) => kind === 'volume'))(
  '$id $title',
  (one) => {
    test('volume at a pH', () => {
      const volume = titrationOf(one.input).volumeAt(Number(one.input.target_pH));
      expect(Math.abs((volume ?? Number.NaN) - Number(one.answer.V))).toBeLessThanOrEqual(
        tolerance(one.condition, Number(one.answer.V)),
      );
    });
  },
);
