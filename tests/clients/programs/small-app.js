// The smallest app that predicts a titration: what a bundler keeps of the package for it is held by size-limit.
import { makeSolution, titrate } from 'protolysis';
import {
  hydrochloricAcid,
  sodiumCarbonate,
  sodiumHydrogenCarbonate,
  sodiumHydroxide,
} from 'protolysis/reagents';

const analyte = makeSolution({
  mL: 50,
  contents: [
    { reagent: sodiumCarbonate, grams: 0.1 },
    { reagent: sodiumHydrogenCarbonate, grams: 0.05 },
    { reagent: sodiumHydroxide, mmol: 0.1 },
  ],
});
const titrant = makeSolution({ contents: [{ reagent: hydrochloricAcid, molar: 0.1 }] });
console.log(titrate({ analyte, titrant }).curve({ every: 0.5, upTo: 40 }).pH);
