import {
  acids,
  bufferResponse,
  capacityOver,
  davies,
  equilibrate,
  makeSolution,
  reagents,
  type Titration,
  titrate,
  waters,
} from 'protolysis';
import {
  drawBuffer,
  drawCapacity,
  drawCurves,
  drawReadings,
  drawSpecies,
  drawSpeciesAlong,
  drawTitration,
} from 'protolysis/plot';
import { describe, expect, test } from 'vitest';
import { listed } from '../faults-of.js';
import { attribute, curvesOf, textsOf } from './texts-of.js';

const carbonate = makeSolution({ mL: 25, contents: [{ reagent: reagents.sodiumCarbonate, molar: 0.1 }] });
const acid = makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] });
const titration = titrate({ analyte: carbonate, titrant: acid });
const said = (svg: string) => textsOf(svg).map(({ text }) => text);

describe('a picture of readings', () => {
  const mL = [0, 10, 20, 30, 40, 50, 60];
  const shift = [0.02, -0.04, 0.1, 0, -0.1, 0.05, 0.03];
  const readings = { mL, pH: mL.map((one, k) => titration.pHAt(one) + (shift[k] as number)), notes: [] };
  const { svg, description } = drawReadings(readings, titration);

  test('has two circles for each: over the curve, and by its difference from it', () => {
    const circles = [...svg.matchAll(/<circle [^>]*r="2.8"[^>]*>/g)].map(([tag]) => tag);
    expect(circles).toHaveLength(14);
    const heights = circles.slice(7).map((tag) => Number(attribute(tag, 'cy')));
    // 0.1 up and 0.1 down are as far from zero, and −0.04 is 0.4 of it
    const zero = heights[3] as number;
    const unit = zero - (heights[2] as number);
    expect(unit).toBeGreaterThan(20);
    for (const [k, height] of heights.entries())
      expect((zero - height) / unit).toBeCloseTo((shift[k] as number) / 0.1, 2);
  });

  test('names what was read and what was predicted, and gives the largest difference', () => {
    expect(said(svg)).toEqual(expect.arrayContaining(['read', 'predicted', 'read less predicted, pH']));
    expect(description).toMatch(
      /7 readings; the largest difference from the prediction is −?0\.10 pH at [24]0\.00 mL/,
    );
  });
});

test('a set-up is all that is drawn from: a titration that was stored as JSON will do', () => {
  const stored: Pick<Titration, 'setup'> = JSON.parse(JSON.stringify({ setup: titration.setup }));
  const readings = { mL: [0, 10], pH: [11.6, 10.5], notes: [] };
  expect(drawReadings(readings, stored).svg).toBe(drawReadings(readings, titration).svg);
  expect(drawTitration(stored).svg).toBe(drawTitration(titration).svg);
  expect(drawSpeciesAlong(stored, acids.carbonic).svg).toBe(drawSpeciesAlong(titration, acids.carbonic).svg);
  expect(drawCurves([{ name: 'a', titration: stored }]).svg).toBe(drawCurves([{ name: 'a', titration }]).svg);
});

describe('a picture of several curves', () => {
  const real = titrate({ ...titration.setup, conditions: { activity: davies } });
  const named = [
    { name: 'ideal', titration },
    { name: 'Davies', titration: real },
  ];

  test('has a line and a name for each, and their differences', () => {
    const { svg } = drawCurves(named, { differences: true });
    expect(curvesOf(svg)).toHaveLength(4);
    expect(said(svg).filter((text) => text === 'Davies')).toHaveLength(2);
    expect(said(svg)).toContain('pH less that of ideal');
  });

  test('takes one to six', () => {
    expect(listed(() => drawCurves([]))).toEqual(['out-of-range titrations']);
    expect(listed(() => drawCurves(Array(7).fill(named[0])))).toEqual(['out-of-range titrations']);
  });
});

describe('a picture of species', () => {
  test('crosses each pKa at the fraction that two neighbours share', () => {
    const { svg } = drawSpecies(acids.acetic);
    const ring = /<circle [^>]*r="4"[^>]*>/.exec(svg)?.[0] ?? '';
    const tickAt = (text: string) => textsOf(svg).find((one) => one.text === text)?.y ?? 0;
    const half = (tickAt('0.0') + tickAt('1.0')) / 2 - 4; // numbers stand 4 px below their line
    expect(Number(attribute(ring, 'cy'))).toBeCloseTo(half, 1);
    expect(said(svg)).toContain('pKa\u00A04.76');
  });

  test('at another temperature has the constants of that temperature', () =>
    expect(said(drawSpecies(acids.tris, { celsius: 37 }).svg)).toContain('pKa\u00A07.75'));

  test('along a titration gives the fractions of equilibrate', () => {
    const { description } = drawSpeciesAlong(titration, acids.carbonic);
    const start = equilibrate(carbonate).species.find(({ formula }) => formula === 'CO3(2-)');
    expect(description).toContain(`CO₃²⁻: largest fraction ${start?.fraction?.toFixed(2)} at 0.00 mL`);
  });

  test('refuses a protolyte that is not there', () =>
    expect(listed(() => drawSpeciesAlong(titration, acids.acetic))).toEqual(['unknown-substance protolyte']));

  test('starts where a protolyte comes in with the titrant', () => {
    const acetic = makeSolution({ contents: [{ reagent: reagents.aceticAcid, molar: 0.1 }] });
    const { svg } = drawSpeciesAlong(titrate({ analyte: carbonate, titrant: acetic }), acids.acetic);
    expect(curvesOf(svg)).toHaveLength(2);
  });
});

describe('a picture of a buffer', () => {
  const response = bufferResponse(carbonate, { add: acid, volumes: [1, 0, 0.5], beside: [waters.tapLike] });

  test('goes from left to right whatever the order of the additions', () => {
    for (const points of curvesOf(drawBuffer(response).svg))
      expect(points.map(([x]) => x)).toEqual(points.map(([x]) => x).sort((a, b) => a - b));
  });

  test('names each liquid', () => {
    expect(said(drawBuffer(response).svg)).toEqual(expect.arrayContaining(['buffer', 'water', 'liquid 1']));
    expect(said(drawBuffer(response, { besideNames: ['tap'] }).svg)).toContain('tap');
    expect(listed(() => drawBuffer(response, { besideNames: ['a', 'b'] }))).toEqual([
      'conflict options.besideNames',
    ]);
  });
});

test('a range that goes on beyond the curve has no end there', () => {
  const acetate = makeSolution({ contents: [{ reagent: reagents.aceticAcid, molar: 0.1 }] });
  const said = (from: number, to: number) => drawCapacity(capacityOver(acetate, { from, to })).description;
  expect(said(2.5, 5.2)).toMatch(/useful about pH 4\.76 from 3\.7\d up\.$/);
  expect(said(4.2, 7)).toMatch(/useful about pH 4\.76 up to 5\.76\.$/);
  expect(said(4.2, 5.2)).toMatch(/useful about pH 4\.76 throughout\.$/);
});

test('a picture of the capacity marks the peak and the range over which it is useful', () => {
  const acetate = makeSolution({ contents: [{ reagent: reagents.aceticAcid, molar: 0.1 }] });
  const { svg } = drawCapacity(capacityOver(acetate, { from: 2.5, to: 7 }));
  // ln10·0.1/4 = 0.0576 at the pKa, 4.756; to a third of it one pH unit to either side, but for water's own share
  expect(said(svg)).toEqual(expect.arrayContaining(['pH\u00A04.76', 'peak\u00A00.0576']));
  expect(said(svg)).toContainEqual(
    expect.stringMatching(/^Dashed: useful about pH 4\.76 from 3\.7\d to 5\.76\.$/),
  );
});
