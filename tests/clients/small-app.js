// The smallest app that predicts a titration: what a bundler keeps of the package for it is held by size-limit.
// `reagents.x` in full: taken apart by `const { x } = reagents`, the catalogue stays whole with most bundlers.
import { makeSolution, reagents, titrate } from 'protolysis';

const analyte = makeSolution({
  mL: 50,
  contents: [
    { reagent: reagents.sodiumCarbonate, grams: 0.1 },
    { reagent: reagents.sodiumHydrogenCarbonate, grams: 0.05 },
    { reagent: reagents.sodiumHydroxide, mmol: 0.1 },
  ],
});
const titrant = makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] });
console.log(titrate({ analyte, titrant }).curve({ every: 0.5, upTo: 40 }).pH);
