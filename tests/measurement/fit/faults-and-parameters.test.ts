import { makeSolution, reagents, titrate } from 'protolysis';
import { type BenchFault, type FreeParameter, fitTitration, simulateReadings } from 'protolysis/measurement';
import { expect, test } from 'vitest';
import { benchEffects } from '../../../src/measurement/practice/bench-effects.js';

const titration = titrate({
  analyte: makeSolution({ mL: 20, contents: [{ reagent: reagents.aceticAcid, molar: 0.1 }] }),
  titrant: makeSolution({ contents: [{ reagent: reagents.sodiumHydroxide, molar: 0.1 }] }),
});

/** A fault, the parameter of its name, and the value that stands for its size. */
const pairs: readonly (readonly [BenchFault, FreeParameter, number])[] = [
  [{ kind: 'sampleAmount', ratio: 0.9 }, 'sampleAmount', 0.9 * 2],
  [{ kind: 'titrantConcentration', ratio: 1.05 }, 'titrantConcentration', 1.05 * 0.1],
  [{ kind: 'carbonDioxideInFlask', molar: 0.004 }, 'carbonDioxideInFlask', 0.004],
  [{ kind: 'carbonDioxideInTitrant', molar: 0.003 }, 'carbonDioxideInTitrant', 0.003],
  [{ kind: 'readTooSoon', wait: 0.8 }, 'readTooSoon', Math.exp(-0.8)],
  [{ kind: 'probeSlope', percent: 93 }, 'probeSlope', 93],
  [{ kind: 'probeOffset', pH: -0.2 }, 'probeOffset', -0.2],
  [{ kind: 'probeDrift', pH: 0.15 }, 'probeDrift', 0.15],
  [{ kind: 'airBubble', mL: 0.4, after: 7 }, { airBubbleAfter: 7 }, 0.4],
  [{ kind: 'initialReading', mL: 1.3 }, 'initialReading', 1.3],
];

const asRead = (faults: readonly BenchFault[]) =>
  simulateReadings(titration, { seed: 1, noise: { pH: 0, mL: 0 }, faults }).readings;

/** A meter that shows 0.001: half of that over √3. */
const uncertainty = { pH: 0.0005 / Math.sqrt(3), mL: 1e-5 };

/** The rounding of the meter is all that is wrong: within five standard uncertainties of it. */
const expectFound = (
  faults: readonly BenchFault[],
  free: readonly FreeParameter[],
  values: readonly number[],
) => {
  const fit = fitTitration(asRead(faults), { titration, free, uncertainty, scatter: 'known' });
  for (const [k, { value, estimate }] of fit.parameters.entries())
    expect(Math.abs(value - (values[k] ?? Number.NaN))).toBeLessThan(
      5 * (estimate?.standardUncertainty ?? 0),
    );
};

test.each(pairs)('a fit finds %j as %j, with its sign and unit', (fault, free, value) =>
  expectFound([fault], [free], [value]),
);

test('a probe that drifts and is read too soon: what drifts does not lag, in a run as in a fit', () =>
  expectFound(
    [
      { kind: 'readTooSoon', wait: 0.5 },
      { kind: 'probeDrift', pH: 2 },
    ],
    ['readTooSoon', 'probeDrift'],
    [Math.exp(-0.5), 2],
  ));

test('a parameter is called in a sentence as its fault is', () => {
  for (const [{ kind }, free] of pairs.filter(
    ([{ kind }]) => kind !== 'readTooSoon' && kind !== 'airBubble',
  )) {
    const [parameter] = fitTitration(asRead([]), { titration, free: [free] }).parameters;
    expect(benchEffects[kind].words).toContain(parameter?.name);
  }
});
