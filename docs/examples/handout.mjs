// Writes the handout for the assay of the invented pool pH-raiser powder, for the student and for the instructor.
import { mkdirSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { aliquot, indicators, makeSolution, prepareBuffer, titrate } from 'protolysis';
import { makeHandout } from 'protolysis/handout';
import {
  disodiumHydrogenPhosphate,
  hydrochloricAcid,
  sodiumCarbonate,
  sodiumDihydrogenPhosphate,
} from 'protolysis/reagents';

const powder = { reagent: sodiumCarbonate, grams: 0.2, purity: 0.95 };
const titration = titrate({
  analyte: makeSolution({ mL: 50, contents: [powder] }),
  titrant: makeSolution({ contents: [{ reagent: hydrochloricAcid, molar: 0.1 }] }),
});
const recipe = prepareBuffer({
  pH: 7,
  molar: 0.05,
  mL: 100,
  from: [sodiumDihydrogenPhosphate, disodiumHydrogenPhosphate],
});
if (recipe.status !== 'prepared') throw new Error(recipe.reason);
const folder = join(tmpdir(), 'protolysis-handout');
mkdirSync(folder, { recursive: true });
for (const audience of /** @type {const} */ (['student', 'instructor'])) {
  const path = join(folder, `pool-powder-${audience}.html`);
  const html = makeHandout(titration, {
    audience,
    title: 'How much carbonate is in a pool pH-raiser powder?',
    sample: { name: 'powder', grams: 0.2 },
    additions: { upTo: 50 }, // one filling of the burette
    indicators: [indicators.phenolphthalein, indicators.bromocresolGreen],
    buffer: {
      recipe,
      solution: aliquot(recipe.solution, { mL: 50 }),
      add: makeSolution({ contents: [{ reagent: hydrochloricAcid, molar: 0.1 }] }),
    },
  });
  writeFileSync(path, html);
  console.log(`Handout for the ${audience}: ${path}`);
}
