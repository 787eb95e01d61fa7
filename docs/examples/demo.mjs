// Predicts the assay of an invented pool pH-raiser powder: 95 % sodium carbonate, the rest inert.
import { acids, cautionsOf, makeSolution, sourcesOf, tabulate, titrate, waterAt25 } from 'protolysis';
import { hydrochloricAcid, sodiumCarbonate } from 'protolysis/reagents';

const powder = { reagent: sodiumCarbonate, grams: 0.2, purity: 0.95 };
const analyte = makeSolution({ mL: 50, contents: [powder] });
const titrant = makeSolution({ contents: [{ reagent: hydrochloricAcid, molar: 0.1 }] });
const titration = titrate({ analyte, titrant });
const { equivalencePoints, halfEquivalencePoints, inflectionPoints } = titration;
const pKas = acids.carbonic.steps.map(({ pKa }) => pKa).join(' and ');

console.log('0.2000 g of an invented pool pH-raiser powder, 95 % sodium carbonate, in 50 mL of water');
console.log(
  'with 0.1000 mol/L hydrochloric acid, 0.5 mL at a time; ideal solution, 25 °C, closed to the air',
);
console.log('\nThe curve: mL added in all, pH, slope dpH/dmL\n');
console.log(tabulate(titration.curve({ every: 0.5, upTo: 42 }), { mL: 2, pH: 2, slope: 3 }));
console.log('\nEquivalence points\n');
console.log(tabulate(equivalencePoints, { mL: 3, pH: 2, slope: 3, reaction: 'text' }));
console.log('\nHalf-equivalence points\n');
console.log(tabulate(halfEquivalencePoints, { mL: 3, pH: 2, slope: 3 }));
console.log('\nInflection points\n');
console.log(tabulate(inflectionPoints, { mL: 3, pH: 2, slope: 3, kind: 'text' }));
console.log('\nConstants, and where they come from\n');
console.log(`Na2CO3 ${sodiumCarbonate.molarMass} g/mol, carbonic acid pKa ${pKas}, pKw ${waterAt25.pKw}\n`);
for (const { for: uses, citation } of sourcesOf(titration)) console.log(`- ${uses.join(', ')}: ${citation}`);
console.log('\nBefore anyone pours\n');
for (const caution of cautionsOf(titration)) console.log(`- ${caution}`);
