import { makeSolution, reagents, titrate } from 'protolysis';
import { fitTitration, simulateReadings, type TitrationFit } from 'protolysis/measurement';
import { drawFit } from 'protolysis/plot';
import { describe, expect, test } from 'vitest';
import { listed } from '../faults-of.js';
import { attribute, textsOf } from './texts-of.js';

const titration = titrate({
  analyte: makeSolution({ mL: 25, contents: [{ reagent: reagents.sodiumCarbonate, molar: 0.05 }] }),
  titrant: makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] }),
});
const volumes = Array.from({ length: 31 }, (_, k) => k);
const { readings } = simulateReadings(titration, { seed: 8, volumes });
const uncertainty = { pH: 0.02, mL: 0.02 };
const fitOf = (free: Parameters<typeof fitTitration>[1]['free'], given = readings) =>
  fitTitration(given, { titration, free, uncertainty });
const said = (svg: string) => textsOf(svg).map(({ text }) => text);

/** The heights of the circles of readings, panel by panel, px. */
const circlesOf = (svg: string) =>
  [...svg.matchAll(/<circle [^>]*r="2.8"[^>]*>/g)].map(([tag]) => ({
    x: Number(attribute(tag, 'cx')),
    y: Number(attribute(tag, 'cy')),
  }));

describe('a picture of a fit', () => {
  const fit = fitOf(['sampleAmount']);
  const { svg, description } = drawFit(fit);

  test('has two circles for each reading, the second by its distance from the curve', () => {
    const circles = circlesOf(svg);
    expect(circles).toHaveLength(62);
    const heights = circles.slice(31).map(({ y }) => y);
    const [first = 0, second = 0] = fit.fitted.distance;
    const unit = ((heights[1] as number) - (heights[0] as number)) / (first - second);
    for (const [k, height] of heights.entries())
      expect((height - (heights[0] as number)) / unit).toBeCloseTo(
        first - (fit.fitted.distance[k] as number),
        2,
      );
  });

  test('names what was read, what was fitted and the area, and says how the area was made', () => {
    expect(said(svg)).toEqual(
      expect.arrayContaining([
        'read',
        'fitted',
        '95 % confidence',
        'Area: 95 % confidence of the curve at each volume, from the covariance of the fit.',
      ]),
    );
    expect(description).toMatch(
      /31 readings; the largest distance from the curve is −?\d\.\d\d standard uncertainties at \d+\.00 mL/,
    );
  });

  test('is drawn from a fit that was stored as JSON too', () =>
    expect(drawFit(JSON.parse(JSON.stringify(fit))).svg).toBe(svg));

  test('shows the readings without the faults of the bench that were found', () => {
    // a probe that shows 0.3 too much and a burette that starts at 0.5 mL: taken off, the circles are where they were
    const moved = {
      mL: readings.mL.slice(1).map((mL) => mL + 0.5),
      pH: readings.pH.slice(1).map((pH) => pH + 0.3),
      notes: [],
    };
    const shifted = fitOf(['sampleAmount', 'probeOffset', 'initialReading'], moved);
    const [, offset, initial] = shifted.parameters;
    expect(offset?.value).toBeCloseTo(0.3, 1);
    expect(initial?.value).toBeCloseTo(0.5, 1);
    const drawn = drawFit(shifted).svg;
    const corrected = drawFit({
      ...shifted,
      parameters: shifted.parameters.slice(0, 1),
      correlation: [[1]],
      fitted: {
        ...shifted.fitted,
        mL: moved.mL.map((mL) => mL - (initial?.value ?? 0)),
        pH: moved.pH.map((pH) => pH - (offset?.value ?? 0)),
      },
    }).svg;
    expect(circlesOf(drawn)).toEqual(circlesOf(corrected));
    expect(said(drawn)).toContain(
      'The readings stand without what the fit found of: offset of the probe, initial reading of the burette.',
    );
    expect(said(svg)).not.toContainEqual(expect.stringMatching(/^The readings stand without/));
  });

  test('has no area where a parameter is open or at the end of its range, and says so', () => {
    const [amount] = fit.parameters;
    const open = { ...fit, parameters: [{ ...amount, estimate: null }] } as unknown as TitrationFit;
    const note =
      'No area of confidence: the readings leave this open or at the end of its range: amount of sample.';
    expect(said(drawFit(open).svg).join(' ')).toContain(note);
    const atLimit = { ...fit, parameters: [{ ...amount, atLimit: true }] } as unknown as TitrationFit;
    expect(said(drawFit(atLimit).svg).join(' ')).toContain(note);
    expect(said(drawFit(atLimit).svg)).not.toContain('95 % confidence');
  });

  test('has none either where it would reach amounts below zero', () => {
    const [amount] = fit.parameters;
    const estimate = { ...amount?.estimate, standardUncertainty: 10 * (amount?.value ?? 0) };
    const unsure = { ...fit, parameters: [{ ...amount, estimate }] } as unknown as TitrationFit;
    expect(said(drawFit(unsure).svg)).toContain('No area of confidence: it would reach amounts below zero.');
  });

  test('refuses what does not fit together', () => {
    const { fitted } = fit;
    expect(listed(() => drawFit({ ...fit, correlation: [] }))).toEqual(['conflict fit.correlation']);
    const short = { ...fitted, distance: [1] };
    expect(listed(() => drawFit({ ...fit, fitted: short }))).toEqual(['conflict fit.fitted.distance']);
  });
});
