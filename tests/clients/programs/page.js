// In a browser, without a bundler: the entries that rest on ES modules alone. What it finds becomes the text of the page.
import { makeSolution, pHOf } from 'protolysis';
import { colourDifference } from 'protolysis/colour';
import { exactPH, makeSolution as makeExactly } from 'protolysis/exact';
import { hydrochloricAcid } from 'protolysis/reagents';

const recipe = { mL: 100, contents: [{ reagent: hydrochloricAcid, molar: 1e-7 }] };
const found = {
  pH: pHOf(makeSolution(recipe), { pKw: 14 }),
  exactPH: String(exactPH(makeExactly(recipe), { digits: 30, pKw: '14' }).pH),
  blackToWhite: colourDifference('#000000', '#ffffff'),
};
globalThis.document.body.textContent = JSON.stringify(found);
