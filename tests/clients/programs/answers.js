/**
 * What each entry exports, and an answer of each that rests on a package: decimal.js, culori, papaparse, ml-matrix.
 *
 * @param {Record<string, any>} entries
 */
export function answersOf({ index, colour, exact, measurement, ...catalogues }) {
  const { makeSolution, pHOf, pHStandards, reagents } = index;
  const recipe = { mL: 100, contents: [{ reagent: reagents.hydrochloricAcid, molar: 1e-7 }] };
  const readings = measurement.readReadings('V/mL;pH\n0;3\n1;3,1\n2;3,3\n');
  const [first, second] = [pHStandards.phthalate, pHStandards.borax].map((standard) => ({
    standard,
    celsius: 25,
    mV: 59 * (7 - measurement.standardPH(standard, 25)),
  }));
  return {
    exports: Object.fromEntries(
      Object.entries({ index, colour, exact, measurement, ...catalogues }).map(([name, entry]) => [
        name,
        Object.keys(entry).filter((key) => !['default', 'module.exports'].includes(key)),
      ]),
    ),
    pH: pHOf(makeSolution(recipe), { pKw: 14 }),
    exactPH: String(exact.exactPH(exact.makeSolution(recipe), { digits: 30, pKw: '14' }).pH),
    blackToWhite: colour.colourDifference('#000000', '#ffffff'),
    read: readings.readings.pH,
    offsetAtSeven: measurement.calibrateProbe([first, second]).offset.value,
  };
}
