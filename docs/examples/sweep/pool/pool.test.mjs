import assert from 'node:assert/strict';
import { test } from 'node:test';
import { transferableSymbol, valueSymbol } from 'piscina';
import { makeSolution, titrate } from 'protolysis';
import { hydrochloricAcid, sodiumCarbonate } from 'protolysis/reagents';
import { curveOf, sample, volumes } from '../curves.mjs';
import chunk from './chunk.mjs';
import { sweep } from './sweep.mjs';

const curves = 1_200; // three chunks, the last one short

async function collect(options) {
  const all = new Float64Array(curves * volumes.length);
  const progress = [];
  await sweep({
    curves,
    ...options,
    onChunk: ({ from, count, pHs }) =>
      pHs.forEach((pH, row) => {
        all[(from + (row % count)) * volumes.length + Math.floor(row / count)] = pH;
      }),
    onProgress: (done) => progress.push(done),
  });
  return { all, progress };
}

test('the sweep is the same on one thread and on two, and tells how far it is', async () => {
  const one = await collect({ threads: 1 });
  const two = await collect({ threads: 2 });
  assert.deepEqual(two.all, one.all);
  assert.equal(two.progress.length, 3);
  assert.equal(two.progress.at(-1), curves);
});

test('a curve of it is the one that titrate gives', async () => {
  const { all } = await collect({ threads: 2 });
  for (const k of [0, 499, 500, 1_199]) {
    const { purity, molar } = curveOf(k);
    const powder = { reagent: sodiumCarbonate, grams: sample.grams, purity };
    const titration = titrate({
      analyte: makeSolution({ mL: sample.mL, contents: [powder] }),
      titrant: makeSolution({ contents: [{ reagent: hydrochloricAcid, molar }] }),
    });
    const expected = titration.pHs(volumes, new Float64Array(volumes.length));
    const worst = Math.max(...expected.map((pH, v) => Math.abs(pH - all[k * volumes.length + v])));
    // Concentrations are rounded once more on one way than on the other; a steep point makes a hundred times of it.
    assert.ok(worst < 1e-11, `curve ${k} is off by ${worst}`);
  }
});

test('the array is handed over, not copied', () => {
  const result = chunk({ from: 0, count: 2 });
  assert.ok(
    result[transferableSymbol] instanceof ArrayBuffer || ArrayBuffer.isView(result[transferableSymbol]),
  );
  assert.equal(result[valueSymbol].length, 2 * volumes.length);
});

test('an abort stops the workers in the middle', async () => {
  const stop = new AbortController();
  const seen = [];
  const running = sweep({
    curves: 1_000_000,
    threads: 2,
    signal: stop.signal,
    onChunk: ({ from }) => seen.push(from),
    onProgress: () => stop.abort(),
  });
  await assert.rejects(running, { name: 'AbortError' });
  assert.ok(seen.length < 10, `${seen.length} of 2000 chunks came`);
});
