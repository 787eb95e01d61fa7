// Predicts the assay of an invented pool pH-raiser powder: 95 % sodium carbonate, the rest inert.
import {
  cautionsOf,
  makeSolution,
  reagents,
  rows,
  sourcesOf,
  tabulate,
  titrate,
  waterAt25,
} from 'protolysis';

const powder = { reagent: reagents.sodiumCarbonate, grams: 0.2, purity: 0.95 };
const analyte = makeSolution({ mL: 50, contents: [powder] });
const titrant = makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] });
const titration = titrate({ analyte, titrant });
const { equivalencePoints, halfEquivalencePoints, inflectionPoints } = titration;
const sources = sourcesOf([titration.setup, waterAt25]);

console.log('0.2000 g of an invented pool pH-raiser powder, 95 % sodium carbonate, in 50 mL of water');
console.log(
  'with 0.1000 mol/L hydrochloric acid, in additions of 0.5 mL; ideal solution, 25 °C, closed to the air',
);
console.log('\nThe curve: mL added in all, pH, slope dpH/dmL\n');
console.log(tabulate(rows(titration.curve({ every: 0.5, upTo: 42 })), { mL: 2, pH: 2, slope: 3 }));
console.log('\nEquivalence points\n');
console.log(tabulate(equivalencePoints, { mL: 3, pH: 2, slope: 2, reaction: 'text' }));
console.log('\nHalf-equivalence points\n');
console.log(tabulate(halfEquivalencePoints, { mL: 3, pH: 2, slope: 3 }));
console.log('\nInflection points\n');
console.log(tabulate(inflectionPoints, { mL: 3, pH: 2, slope: 3, kind: 'text' }));
console.log('\nWhere the constants come from\n');
for (const { for: uses, citation } of sources) console.log(`- ${uses.join(', ')}: ${citation}`);
console.log('\nBefore anyone pours\n');
for (const caution of cautionsOf([analyte, titrant])) console.log(`- ${caution}`);
