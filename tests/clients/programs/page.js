// In a browser, without a bundler: the entries that rest on ES modules alone. What it finds becomes the text of the page.
import { makeSolution, pHOf, titrate } from 'protolysis';
import { colourDifference } from 'protolysis/colour';
import { exactPH, makeSolution as makeExactly } from 'protolysis/exact';
import { makeHandout } from 'protolysis/handout';
import { drawTitration } from 'protolysis/plot';
import { hydrochloricAcid, sodiumCarbonate } from 'protolysis/reagents';

const recipe = { mL: 100, contents: [{ reagent: hydrochloricAcid, molar: 1e-7 }] };
const titration = titrate({
  analyte: makeSolution({ mL: 50, contents: [{ reagent: sodiumCarbonate, grams: 0.2 }] }),
  titrant: makeSolution({ contents: [{ reagent: hydrochloricAcid, molar: 0.1 }] }),
});
const page = /** @type {any} */ (globalThis).document;
const frame = page.createElement('div');
frame.innerHTML =
  drawTitration(titration, { title: 'Powder' }).svg + makeHandout(titration, { title: 'Powder' });
const found = {
  pH: pHOf(makeSolution(recipe), { pKw: 14 }),
  exactPH: String(exactPH(makeExactly(recipe), { digits: 30, pKw: '14' }).pH),
  blackToWhite: colourDifference('#000000', '#ffffff'),
  picture: frame.querySelector('svg title')?.textContent,
  heading: frame.querySelector('h1')?.textContent,
};
page.body.textContent = JSON.stringify(found);
