import {
  acids,
  bufferResponse,
  capacityOver,
  davies,
  indicators,
  makeSolution,
  reagents,
  type Solution,
  titrate,
  waters,
} from 'protolysis';
import { type Contribution, fitTitration } from 'protolysis/measurement';
import {
  drawBudget,
  drawBuffer,
  drawCapacity,
  drawCurves,
  drawFit,
  drawReadings,
  drawSpecies,
  drawSpeciesAlong,
  drawTitration,
  type Picture,
} from 'protolysis/plot';
import { describe, expect, test } from 'vitest';
import { curvesOf, outside, overlapsIn, textsOf } from './texts-of.js';

/** A page of A4 between its margins, and a phone. */
const widths = [640, 360];

/** Nothing stands on anything else, nothing is cut off, and no label of a panel stands on a curve. */
function expectTidy({ svg, width, height, title }: Picture): void {
  const texts = textsOf(svg);
  expect({ title, overlaps: overlapsIn(texts) }).toEqual({ title, overlaps: [] });
  expect({ title, outside: outside(texts, width, height) }).toEqual({ title, outside: [] });
  const onCurves = texts.filter(
    ({ isInside, left, right, top, bottom }) =>
      isInside &&
      curvesOf(svg).some((points) => points.some(([x, y]) => x > left && x < right && y > top && y < bottom)),
  );
  expect({ title, onCurves: onCurves.map(({ text }) => text) }).toEqual({ title, onCurves: [] });
}

const solution = (reagent: (typeof reagents)[keyof typeof reagents]): Solution & { mL: number } =>
  makeSolution({ mL: 25, contents: [{ reagent, molar: 0.1 }] });
const [acid, base] = [solution(reagents.hydrochloricAcid), solution(reagents.sodiumHydroxide)];

/** Every reagent of the catalogue with a strong acid and with a strong base, as far as there is a point to find. */
const titrations = Object.values(reagents)
  .flatMap((reagent) => [acid, base].map((titrant) => titrate({ analyte: solution(reagent), titrant })))
  .filter(({ equivalencePoints }) => equivalencePoints.length > 0);

describe('texts neither overlap nor leave the sheet', () => {
  test('in the titration of any reagent of the catalogue, on paper and on a phone', () => {
    expect(titrations.length).toBeGreaterThan(50);
    const all = Object.values(indicators);
    for (const [k, titration] of titrations.entries())
      for (const width of widths)
        expectTidy(
          drawTitration(titration, {
            width,
            indicators: [all[k % all.length], all[(7 * k + 3) % all.length]] as (typeof indicators.litmus)[],
            slope: k % 2 === 0,
          }),
        );
  });

  test('in the species of any acid of the catalogue', () => {
    for (const protolyte of Object.values(acids))
      for (const width of widths) expectTidy(drawSpecies(protolyte, { width }));
  });

  test.each(widths)('in the other pictures at %d px', (width) => {
    const carbonate = titrate({ analyte: solution(reagents.sodiumCarbonate), titrant: acid });
    const real = titrate({ ...carbonate.setup, conditions: { activity: davies } });
    const mL = Array.from({ length: 36 }, (_, k) => 2 * k);
    const pH = mL.map((volume, k) => carbonate.pHAt(volume) + 0.1 * Math.sin(k));
    const envelope = {
      name: 'expanded uncertainty',
      mL,
      lower: pH.map((one) => one - 0.4),
      upper: pH.map((one) => one + 0.4),
    };
    const named = [
      { name: 'ideal', titration: carbonate },
      { name: 'with the Davies equation', titration: real },
    ];
    const phosphate = solution(reagents.disodiumHydrogenPhosphate);
    const response = bufferResponse(phosphate, { add: acid, drops: 20, beside: [waters.tapLike] });
    const fit = fitTitration(
      { mL, pH, notes: [] },
      {
        titration: carbonate,
        free: ['sampleAmount', 'titrantConcentration', 'probeOffset', 'probeSlope', 'initialReading'],
        uncertainty: { pH: 0.1, mL: 0.05 },
      },
    );
    const contributions = Array.from({ length: 20 }, (_, k) => ({
      input: `input ${k} with a name that takes more than a line of a phone`,
      percent: 5,
    })) as unknown as Contribution[];
    for (const picture of [
      drawFit(fit, { width }),
      drawBudget({ contributions }, { width }),
      drawReadings({ mL, pH, notes: [] }, carbonate, { width, envelope }),
      drawCurves(named, { width, differences: true }),
      drawSpeciesAlong(carbonate, acids.carbonic, { width }),
      drawBuffer(response, { width, besideNames: ['water as from a tap'] }),
      drawCapacity(capacityOver(phosphate, { from: 3, to: 11 }), { width }),
      drawTitration(real, { width, envelope, additions: { every: 0.5, upTo: 70 } }),
    ])
      expectTidy(picture);
  });

  test('with names of any length', () => {
    const long = { ...reagents.sodiumCarbonate, name: `sodium${'carbonate'.repeat(20)}` };
    for (const width of [320, 640])
      expectTidy(drawTitration(titrate({ analyte: solution(long as never), titrant: acid }), { width }));
  });
});
