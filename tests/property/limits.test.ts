import fc from 'fast-check';
import {
  conditionLimits,
  defineProtolyte,
  defineReagent,
  equilibrate,
  makeSolution,
  protolyteLimits,
  type Reagent,
  type Solution,
  solutionLimits,
  titrate,
  titrationLimits,
} from 'protolysis';
import { describe, expect, test } from 'vitest';
import { badNumberIn, everythingOf } from './answers.js';

const [lowest, highest] = protolyteLimits.pKa;
const source = { kind: 'fromMemory', note: 'a limit' } as const;

/** An acid with as many steps, as far apart and as highly charged as is accepted, or less. */
const reagents: fc.Arbitrary<Reagent> = fc
  .record({
    pKa: fc.array(fc.constantFrom(lowest, highest, 7), { minLength: 1, maxLength: protolyteLimits.steps }),
    highestCharge: fc.boolean(),
    count: fc.constantFrom(5e-324, 1e-9, 1, 1000),
    ionCharge: fc.constantFrom(-protolyteLimits.charge, -1, 0, 1, protolyteLimits.charge),
    ionCount: fc.constantFrom(5e-324, 1, 1000),
  })
  .map(({ pKa, highestCharge, count, ionCharge, ionCount }) => {
    const top = highestCharge ? protolyteLimits.charge : pKa.length - protolyteLimits.charge;
    const id = `${pKa.join(' ')} ${top}`;
    const protolyte = defineProtolyte({
      id,
      name: id,
      species: [...pKa, 0].map((_, lost) => ({ formula: `A${top - lost}`, charge: top - lost })),
      steps: pKa.map((value) => ({ pKa: value, source })),
    });
    return defineReagent({
      id: `${id} ${count} ${ionCharge} ${ionCount}`,
      name: id,
      protolytes: [{ protolyte, count }],
      ions: [{ ion: { formula: 'ion', charge: ionCharge }, count: ionCount }],
    });
  });

const solutions: fc.Arbitrary<Solution> = fc
  .record({
    mL: fc.constantFrom(solutionLimits.leastML, 1, solutionLimits.mL),
    contents: fc.array(
      fc.record({ reagent: reagents, molar: fc.constantFrom(0, 5e-324, 1e-20, 1, solutionLimits.molar / 4) }),
      { maxLength: 4 },
    ),
  })
  .map(makeSolution);
const conditions = fc.record({ pKw: fc.constantFrom(...conditionLimits.pKw) });

describe('at the limits of what is accepted', () => {
  test('every number of an equilibrium is finite', () => {
    fc.assert(
      fc.property(solutions, conditions, (solution, at) => {
        expect(badNumberIn(equilibrate(solution, at))).toBeUndefined();
      }),
      { numRuns: 200 },
    );
  });

  test('every number of a titration is finite', () => {
    fc.assert(
      fc.property(solutions, solutions, conditions, (analyte, titrant, at) => {
        for (const part of everythingOf(titrate({ analyte, titrant, conditions: at })))
          expect(badNumberIn(part)).toBeUndefined();
      }),
      { numRuns: 60 },
    );
  });

  test('any pH that a titration has can be asked for', () => {
    fc.assert(
      fc.property(solutions, solutions, conditions, (analyte, titrant, at) => {
        const titration = titrate({ analyte, titrant, conditions: at });
        for (const mL of [0, 1, titrationLimits.mL]) {
          const pH = titration.pHAt(mL);
          expect(pH >= titrationLimits.pH.from && pH <= titrationLimits.pH.to).toBe(true);
        }
      }),
      { numRuns: 100 },
    );
  });
});
