/**
 * What each entry exports, and an answer of each that rests on a package: decimal.js, culori, papaparse, ml-matrix, d3-scale and
 * d3-shape.
 *
 * @param {Record<string, any>} entries
 */
export function answersOf(entries) {
  const { index, colour, exact, measurement, plot, handout } = entries;
  const { makeSolution, pHOf, pHStandards, reagents, titrate } = index;
  const recipe = { mL: 100, contents: [{ reagent: reagents.hydrochloricAcid, molar: 1e-7 }] };
  const readings = measurement.readReadings('V/mL;pH\n0;3\n1;3,1\n2;3,3\n');
  const [first, second] = [pHStandards.phthalate, pHStandards.borax].map((standard) => ({
    standard,
    celsius: 25,
    mV: 59 * (7 - measurement.standardPH(standard, 25)),
  }));
  const titration = titrate({
    analyte: makeSolution({ mL: 50, contents: [{ reagent: reagents.sodiumCarbonate, grams: 0.2 }] }),
    titrant: makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] }),
  });
  const { svg } = plot.drawCurves([{ name: 'ideal', titration }], { upTo: 40 });
  const page = handout.makeHandout(titration, { sample: { name: 'powder', grams: 0.2 } });
  return {
    exports: Object.fromEntries(
      Object.entries(entries).map(([name, entry]) => [
        name,
        Object.keys(entry).filter((key) => !['default', 'module.exports'].includes(key)),
      ]),
    ),
    pH: pHOf(makeSolution(recipe), { pKw: 14 }),
    exactPH: String(exact.exactPH(exact.makeSolution(recipe), { digits: 30, pKw: '14' }).pH),
    blackToWhite: colour.colourDifference('#000000', '#ffffff'),
    read: readings.readings.pH,
    offsetAtSeven: measurement.calibrateProbe([first, second]).offset.value,
    ticks: [...svg.matchAll(/text-anchor="middle"[^>]*>(\d+)</g)].map(([, mL]) => Number(mL)),
    hasCurve: /<path d="M[\d.]+,[\d.]+L/.test(svg),
    toWeigh: /Weigh about [\d.]+ g of powder/.exec(page)?.[0],
  };
}
