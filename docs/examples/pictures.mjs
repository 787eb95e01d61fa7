// Draws the pictures of the documentation: the assay of an invented pool pH-raiser powder, 95 % sodium carbonate.
import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import {
  acids,
  bufferResponse,
  capacityOver,
  davies,
  indicators,
  makeSolution,
  molarMassOf,
  reagents,
  titrate,
  waters,
} from 'protolysis';
import { assay as assayOf, fitTitration, glasswareVolume } from 'protolysis/measurement';
import {
  drawBudget,
  drawBuffer,
  drawCapacity,
  drawCurves,
  drawFit,
  drawReadings,
  drawSpecies,
  drawSpeciesAlong,
  drawTitration,
} from 'protolysis/plot';

const acid = makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] });
/** @param {number} purity */
const powder = (purity) =>
  titrate({
    analyte: makeSolution({ mL: 50, contents: [{ reagent: reagents.sodiumCarbonate, grams: 0.2, purity }] }),
    titrant: acid,
  });
const assay = powder(0.95);
const real = titrate({ ...assay.setup, conditions: { activity: davies } });
const title = 'Pool powder with 0.1 mol/L hydrochloric acid';

// Between which pH the curve lies if the powder holds 93 to 97 % of carbonate.
const mL = assay.curve({ maxStep: 0.1, upTo: 50 }).mL;
const [poor, rich] = [0.93, 0.97].map((purity) => Array.from(powder(purity).pHs(mL)));
const envelope = { name: '93 to 97 % carbonate', mL, lower: poor ?? [], upper: rich ?? [] };

// Invented readings: the Davies curve, with a probe that reads up to 0.04 off.
const read = Array.from({ length: 43 }, (_, k) => k);
const pH = Array.from(real.pHs(read), (value, k) => Number((value + 0.04 * Math.sin(2.3 * k)).toFixed(2)));

// Invented readings of a powder with 92 % of carbonate, by a probe that shows 0.08 too much and scatters by up to 0.1.
const poorer = titrate({ ...powder(0.92).setup, conditions: { activity: davies } });
const coarse = Array.from({ length: 22 }, (_, k) => 2 * k);
const scattered = Array.from(poorer.pHs(coarse), (value, k) =>
  Number((value + 0.08 + 0.1 * Math.sin(2.3 * k + 1)).toFixed(2)),
);
const fit = fitTitration(
  { mL: coarse, pH: scattered, notes: [] },
  { titration: real, free: ['sampleAmount', 'probeOffset'], uncertainty: { pH: 0.05, mL: 0.05 } },
);

// Three titrations of aliquots of one flask, as in the guide on results.
const carbonate = assayOf({
  runs: [
    { grams: 1.2904, mL: 23.12 },
    { grams: 1.2904, mL: 23.16 },
    { grams: 1.2904, mL: 23.1 },
  ],
  molar: { value: 0.10013, standardUncertainty: 0.00012, degreesOfFreedom: 14 },
  molarMass: molarMassOf('Na2CO3'),
  ratio: 2,
  flask: glasswareVolume({ kind: 'flask', size: 250 }),
  aliquot: glasswareVolume({ kind: 'pipette', size: 25 }),
  buretteError: glasswareVolume({ kind: 'burette', size: 50, mL: 0 }),
});

/** @param {number} molar */
const strong = (molar) =>
  titrate({
    analyte: makeSolution({ mL: 25, contents: [{ reagent: reagents.hydrochloricAcid, molar }] }),
    titrant: makeSolution({ contents: [{ reagent: reagents.sodiumHydroxide, molar }] }),
  });
const buffer = makeSolution({
  mL: 50,
  contents: [
    { reagent: reagents.sodiumHydrogenCarbonate, molar: 0.05 },
    { reagent: reagents.sodiumCarbonate, molar: 0.05 },
  ],
});
const drops = makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 1 }] });
const chosen = [indicators.phenolphthalein, indicators.methylOrange];

/** By the name of the file. */
export const pictures = {
  titration: drawTitration(assay, { title, upTo: 50, indicators: chosen }),
  phone: drawTitration(assay, { title, upTo: 50, indicators: chosen, width: 360 }),
  additions: drawTitration(assay, { title, additions: { every: 1, upTo: 44 }, slope: true }),
  envelope: drawTitration(assay, { title, envelope }),
  readings: drawReadings({ mL: read, pH, notes: [] }, real, { title: 'Readings and the Davies prediction' }),
  fit: drawFit(fit, { title: 'A fit of amount and probe offset' }),
  budget: drawBudget(carbonate, { title: 'Mass fraction of carbonate: where its uncertainty comes from' }),
  models: drawCurves(
    [
      { name: 'ideal', titration: assay },
      { name: 'Davies', titration: real },
    ],
    { title, upTo: 50, differences: true },
  ),
  concentrations: drawCurves(
    [0.1, 0.01, 0.001].map((molar) => ({ name: `${molar} mol/L`, titration: strong(molar) })),
    { title: 'Strong acid with strong base, at three concentrations' },
  ),
  species: drawSpecies(acids.carbonic, { from: 3, to: 13 }),
  'species-along': drawSpeciesAlong(assay, acids.carbonic, { title: 'Where the carbonate goes', upTo: 50 }),
  buffer: drawBuffer(bufferResponse(buffer, { add: drops, drops: 20, beside: [waters.tapLike] }), {
    title: 'Carbonate buffer and water under drops of 1 mol/L acid',
    besideNames: ['tap water'],
  }),
  capacity: drawCapacity(capacityOver(buffer, { from: 4.5, to: 12, every: 0.05 }), {
    title: 'Capacity of a carbonate buffer, 0.1 mol/L in all',
  }),
};

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const folder = fileURLToPath(new URL('../pictures/', import.meta.url));
  mkdirSync(folder, { recursive: true });
  for (const [name, { svg }] of Object.entries(pictures)) writeFileSync(`${folder}${name}.svg`, `${svg}\n`);
  console.log(`${Object.keys(pictures).length} pictures are in ${folder}`);
}
