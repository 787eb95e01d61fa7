// Written and read by an engine that has nothing to do with the package that the example uses.
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, test } from 'node:test';
import { makeTable, RecordBatchReader, tableFromIPC, tableToIPC, vectorFromArray } from 'apache-arrow';
import polars from 'nodejs-polars';
import { makeSolution, titrate } from 'protolysis';
import { hydrochloricAcid, sodiumCarbonate } from 'protolysis/reagents';
import { curveOf, pHsOfCurves, sample, volumes } from '../curves.mjs';
import { numbersOf, pointsOf } from './points.mjs';

const folder = mkdtempSync(join(tmpdir(), 'arrow-'));
after(() => rmSync(folder, { recursive: true }));
const curves = 300;
const setups = Array.from({ length: curves }, (_, k) => curveOf(k));

test('a dataframe engine writes the set-ups and reads the points', () => {
  const [from, to] = ['setups.arrow', 'points.arrow'].map((name) => join(folder, name));
  polars.DataFrame(setups).writeIPC(from);
  const main = new URL('main.mjs', import.meta.url).pathname;
  const { status, stderr } = spawnSync('node', [main, from, to], { encoding: 'utf8' });
  assert.equal(status, 0, stderr);

  const points = polars.readIPC(readFileSync(to));
  assert.deepEqual(points.columns, ['curve', 'mL', 'pH']);
  assert.equal(points.height, curves * volumes.length);
  assert.deepEqual(
    Float64Array.from(points.getColumn('pH').toArray()),
    pHsOfCurves({ from: 0, count: curves }),
  );
  const ofCurve = points.filter(polars.col('curve').eq(123)).sort('mL');
  assert.deepEqual(ofCurve.getColumn('mL').toArray(), [...volumes]);
  const powder = { reagent: sodiumCarbonate, grams: sample.grams, purity: setups[123].purity };
  const titration = titrate({
    analyte: makeSolution({ mL: sample.mL, contents: [powder] }),
    titrant: makeSolution({ contents: [{ reagent: hydrochloricAcid, molar: setups[123].molar }] }),
  });
  const found = ofCurve.getColumn('pH').toArray();
  const worst = Math.max(...titration.pHs(volumes).map((pH, v) => Math.abs(pH - found[v])));
  // Concentrations are rounded once more on one way than on the other; a steep point makes a hundred times of it.
  assert.ok(worst < 1e-11, `curve 123 is off by ${worst}`);
});

test('batches follow one another, and count their curves through', async () => {
  const columns = (some) => ({
    purity: Float64Array.from(some, ({ purity }) => purity),
    molar: Float64Array.from(some, ({ molar }) => molar),
  });
  const two = makeTable(columns(setups.slice(0, 200))).concat(makeTable(columns(setups.slice(200))));
  const batches = [];
  for await (const batch of pointsOf(RecordBatchReader.from(tableToIPC(two, 'stream')))) batches.push(batch);
  assert.deepEqual(
    batches.map(({ numRows }) => numRows),
    [200 * volumes.length, 100 * volumes.length],
  );
  assert.deepEqual(batches[1].getChild('pH').toArray(), pHsOfCurves({ from: 200, count: 100 }));
  assert.equal(batches[1].getChild('curve').get(0), 200);
});

test('columns are read where they lie in the message', () => {
  const bytes = tableToIPC(makeTable({ purity: Float64Array.of(0.93, 0.95) }), 'stream');
  const [batch] = tableFromIPC(bytes).batches;
  assert.equal(numbersOf(batch, 'purity').buffer, bytes.buffer);
});

test('a column that cannot be taken as it is gets a plain message', () => {
  const [batch] = makeTable({ purity: Float32Array.of(0.95), molar: Int32Array.of(1) }).batches;
  assert.throws(() => numbersOf(batch, 'purity'), /column purity is of Float32; cast it to Float64/);
  assert.throws(() => numbersOf(batch, 'molar'), /column molar is of Int32/);
  assert.throws(() => numbersOf(batch, 'grams'), /no column grams; there are purity, molar/);
  const holes = { getChild: () => vectorFromArray([0.95, null]), schema: batch.schema };
  assert.throws(() => numbersOf(holes, 'purity'), /has 1 nulls; fill or drop them/);
});
