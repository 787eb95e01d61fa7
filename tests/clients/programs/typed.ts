// Types from every entry, as a user's own code meets them.
import type { Curve, InputError, Protolyte, Solution, Titration } from 'protolysis';
import { equilibrate, makeSolution, molarOf, tabulate, titrate } from 'protolysis';
import { carbonic } from 'protolysis/acids';
import { colourDifference, type SeenDifference } from 'protolysis/colour';
import { type ExactPH, exactPH, makeSolution as makeExactly } from 'protolysis/exact';
import { type HandoutOptions, makeHandout } from 'protolysis/handout';
import { phenolphthalein } from 'protolysis/indicators';
import { type Endpoints, findEndpoints, type Readings } from 'protolysis/measurement';
import { drawTitration, type Picture } from 'protolysis/plot';
import { hydrochloricAcid, sodiumCarbonate } from 'protolysis/reagents';

const analyte: Solution = makeSolution({ mL: 50, contents: [{ reagent: sodiumCarbonate, grams: 0.2 }] });
const titrant = makeSolution({ contents: [{ reagent: hydrochloricAcid, molar: 0.1 }] });
const titration: Titration = titrate({ analyte, titrant });
export const curve: Curve = titration.curve({ every: 0.5, upTo: 40 });
export const table: string = tabulate(titration.equivalencePoints, { mL: 2, pH: 2 });
export const free: number = molarOf(equilibrate(analyte), carbonic, 'CO3(2-)');
export const acid: Protolyte = carbonic;
export const seen: SeenDifference | number = colourDifference('#000000', '#ffffff');
export const proven: ExactPH = exactPH(makeExactly({ mL: '50', contents: [] }), { digits: 20 });
export const endpointsOf = (readings: Readings): Endpoints =>
  findEndpoints(readings, { method: 'steepestSlope' });
export const picture: Picture = drawTitration(titration, { upTo: 40 });
const student: HandoutOptions = { sample: { name: 'powder', grams: 0.2 } };
export const page: string = makeHandout(titration, student);
export const faultsOf = ({ issues }: InputError): string[] => issues.map(({ path }) => path);
console.log(phenolphthalein.name);

// @ts-expect-error results are readonly
analyte.mL = 20;
// @ts-expect-error carbonic acid has no such species
molarOf(equilibrate(analyte), carbonic, 'PO4(3-)');
// @ts-expect-error one quantity for each ingredient
makeSolution({ mL: 50, contents: [{ reagent: sodiumCarbonate, grams: 0.2, molar: 0.1 }] });
