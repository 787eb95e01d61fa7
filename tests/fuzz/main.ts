// Hostile and random input in bounded amounts, from a seed that is printed: `npm run fuzz -- --systems 1000000 --seed 7`.
import { parseArgs } from 'node:util';
import { Worker } from 'node:worker_threads';
import type { Order, Report } from './order.js';

const options = {
  /** Hostile and as many extreme arguments of each function. */
  calls: { type: 'string', default: '200' },
  /** Random systems. */
  systems: { type: 'string', default: '20000' },
  /** Of these, how many are compared with the exact entry. */
  exact: { type: 'string', default: '500' },
  /** The same in CI, so that a change is judged by what it changes. */
  seed: { type: 'string', default: process.env.CI ? '20240917' : String(Date.now() % 2 ** 31) },
  /** Seconds that one call may take: the largest inputs allowed take a few on a busy machine. */
  limit: { type: 'string', default: '20' },
} as const;

const { values } = parseArgs({ options });
const wholeOf = (name: keyof typeof options): number => {
  const given = Number(values[name]);
  if (Number.isSafeInteger(given) && given >= 0) return given;
  throw new RangeError(`--${name} is ${values[name]}; give a whole number from 0`);
};
const [seed, limit] = [wholeOf('seed'), wholeOf('limit')];

/** How many calls have begun; only the worker writes it, and it stands still while a call hangs. */
const begun = new Int32Array(new SharedArrayBuffer(4));
const order: Order = {
  calls: wholeOf('calls'),
  systems: wholeOf('systems'),
  exact: wholeOf('exact'),
  seed,
  begun,
};
const worker = new Worker(new URL('./worker.js', import.meta.url), { workerData: order });

console.log(`seed ${seed}`);
let at = 'the start';
let failed = 0;
let passed = 0;
worker.on('message', (report: Report) => {
  if (report.kind === 'at') at = report.name;
  if (report.kind === 'count') console.log(report.words);
  if (report.kind === 'count') passed += 1;
  if (report.kind === 'fault') console.log(`FAULT ${report.words}`);
  if (report.kind === 'fault') failed += 1;
});
worker.on('error', (error) => {
  console.log(`FAULT in ${at}: ${error.stack}`);
  failed += 1;
});

let last = { count: -1, since: Date.now() };
const watch = setInterval(() => {
  const count = begun[0] ?? 0;
  if (count !== last.count) last = { count, since: Date.now() };
  if (Date.now() - last.since < limit * 1000) return;
  console.log(`FAULT call ${count}, in ${at}, took more than ${limit} s`);
  failed += 1;
  void worker.terminate();
}, 500);

worker.on('exit', () => {
  clearInterval(watch);
  console.log(`${passed} passed, ${failed} failed`);
  process.exitCode = failed === 0 ? 0 : 1;
});
