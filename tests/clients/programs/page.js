// In a browser, without a bundler: the entries as ES modules. What they find goes into the page, as text and as a picture.
import { indicators, makeSolution, pHOf, titrate } from 'protolysis';
import { colourDifference } from 'protolysis/colour';
import { exactPH, makeSolution as makeExactly } from 'protolysis/exact';
import { makeHandout } from 'protolysis/handout';
import { drawTitration } from 'protolysis/plot';
import { hydrochloricAcid, sodiumCarbonate } from 'protolysis/reagents';

const recipe = { mL: 100, contents: [{ reagent: hydrochloricAcid, molar: 1e-7 }] };
const titration = titrate({
  analyte: makeSolution({ mL: 50, contents: [{ reagent: sodiumCarbonate, grams: 0.2, purity: 0.95 }] }),
  titrant: makeSolution({ contents: [{ reagent: hydrochloricAcid, molar: 0.1 }] }),
});
const found = {
  pH: pHOf(makeSolution(recipe), { pKw: 14 }),
  exactPH: String(exactPH(makeExactly(recipe), { digits: 30, pKw: '14' }).pH),
  blackToWhite: colourDifference('#000000', '#ffffff'),
  toWeigh: /Weigh about [\d.]+ g of powder/.exec(
    makeHandout(titration, { sample: { name: 'powder', grams: 0.2 } }),
  )?.[0],
};
const { svg } = drawTitration(titration, { indicators: [indicators.methylOrange] });

const { document } = globalThis;
const [words, picture] = ['found', 'picture'].map((id) => document.getElementById(id));
if (!words || !picture) throw new Error('the page lacks an element');
words.textContent = JSON.stringify(found);
picture.innerHTML = svg;
