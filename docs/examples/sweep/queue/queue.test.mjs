// With a Redis server of its own and real worker processes, one of which is killed.
import assert from 'node:assert/strict';
import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, afterEach, before, describe, test } from 'node:test';
import { setTimeout } from 'node:timers/promises';
import { Queue, QueueEvents } from 'bullmq';
import { pHsOfCurves } from '../curves.mjs';
import { connectionTo, queueName } from './server.mjs';
import { sweep } from './sweep.mjs';

const hasServer = spawnSync('redis-server', ['--version']).status === 0;
const skip = hasServer ? false : 'redis-server is not installed (on Debian: apt-get install redis-server)';
const patience = 5_000; // ms: some sixty times what a chunk of these tests takes on an idle machine
const file = (name) => new URL(name, import.meta.url).pathname;

async function freePort() {
  const server = createServer().listen(0, '127.0.0.1');
  await once(server, 'listening');
  const { port } = server.address();
  server.close();
  await once(server, 'close');
  return port;
}

test('without a server there is a plain message', async () => {
  const env = { ...process.env, REDIS_URL: `redis://:secret@127.0.0.1:${await freePort()}` };
  for (const program of ['main.mjs', 'worker.mjs']) {
    const { status, stderr } = spawnSync('node', [file(program)], { env, encoding: 'utf8' });
    assert.equal(status, 1);
    assert.match(stderr, /^No Redis server answers at 127\.0\.0\.1:\d+ .*apt-get install redis-server.*\n$/);
    assert.doesNotMatch(stderr, /secret/);
  }
});

describe('the queue', { skip }, () => {
  const folder = mkdtempSync(join(tmpdir(), 'queue-'));
  const workers = new Set();
  let server;
  let url;
  let connection;

  before(async () => {
    const port = await freePort();
    const options = ['--port', port, '--bind', '127.0.0.1', '--dir', folder, '--save', ''];
    server = spawn('redis-server', options, { stdio: ['ignore', 'pipe', 'inherit'] });
    await new Promise((ready) => {
      server.stdout.on('data', (text) => /Ready to accept connections/.test(text) && ready());
    });
    url = `redis://127.0.0.1:${port}`;
    connection = await connectionTo(url);
  });
  afterEach(() => {
    for (const worker of workers) worker.kill('SIGKILL');
    workers.clear();
  });
  after(async () => {
    server.kill();
    await once(server, 'exit');
    rmSync(folder, { recursive: true });
  });

  function startWorker() {
    const env = { ...process.env, REDIS_URL: url };
    const worker = spawn('node', [file('worker.mjs'), patience], { env, stdio: 'inherit' });
    workers.add(worker);
    return worker;
  }

  /** Every pH of a sweep, in the order of the chunks. */
  async function collect(options) {
    const chunks = new Map();
    const take = ({ from, pHs }) => {
      assert.ok(!chunks.has(from), `the chunk from ${from} came twice`);
      chunks.set(from, pHs);
    };
    await sweep({ connection, ...options, onChunk: take });
    return [...chunks].sort(([a], [b]) => a - b);
  }

  const expected = (curves, chunkSize) =>
    Array.from({ length: Math.ceil(curves / chunkSize) }, (_, k) => {
      const from = k * chunkSize;
      return [from, pHsOfCurves({ from, count: Math.min(chunkSize, curves - from) })];
    });

  test('two workers give the curves that one process gives, bit by bit, and leave nothing behind', async () => {
    for (const _ of [1, 2]) startWorker();
    const progress = [];
    const found = await collect({ curves: 1_200, onProgress: (done) => progress.push(done) });
    assert.deepEqual(found, expected(1_200, 500));
    assert.deepEqual([progress.length, progress.at(-1)], [3, 1_200]);
    const queue = new Queue(queueName, { connection });
    assert.equal(await queue.getJobCountByTypes('waiting', 'active', 'completed', 'failed'), 0);
    await queue.close();
  });

  test('a worker killed in mid-job loses nothing', async () => {
    for (const _ of [1, 2]) startWorker();
    const queue = new Queue(queueName, { connection });
    const events = new QueueEvents(queueName, { connection });
    const stalled = [];
    events.on('stalled', ({ jobId }) => stalled.push(jobId));
    let killed;
    events.on('active', async ({ jobId }) => {
      if (killed) return;
      const pid = Number((await queue.getJob(jobId)).processedBy.split(' ').at(-1));
      const worker = [...workers].find((one) => one.pid === pid);
      if (killed || !worker) return;
      // Halted first, so that there is no doubt what it was at.
      worker.kill('SIGSTOP');
      await setTimeout(50); // the server may have a message of it
      if (!killed && (await queue.getJob(jobId)).finishedOn === undefined) {
        killed = jobId;
        worker.kill('SIGKILL');
      } else worker.kill('SIGCONT');
    });
    await events.waitUntilReady();

    const [curves, chunkSize] = [40_000, 2_000];
    const found = await collect({ curves, chunkSize });
    assert.ok(killed, 'no worker was killed at work');
    assert.ok(stalled.includes(killed), `stalled: ${stalled}`);
    assert.deepEqual(found, expected(curves, chunkSize));
    await Promise.all([events.close(), queue.close()]);
  });

  test('jobs wait for a worker, and results for a producer', async () => {
    const stop = new AbortController();
    const queue = new Queue(queueName, { connection });
    const first = collect({ curves: 1_000, signal: stop.signal });
    while ((await queue.getWaitingCount()) < 2) await setTimeout(10);
    stop.abort();
    await assert.rejects(first, { name: 'AbortError' });
    assert.equal(await queue.getWaitingCount(), 0);

    await queue.add('chunk', { from: 0, count: 500 }, { jobId: 'curves-0-500' }); // as a producer that died has left it
    startWorker();
    while ((await queue.getCompletedCount()) < 1) await setTimeout(10);
    assert.deepEqual(await collect({ curves: 1_000 }), expected(1_000, 500));
    await queue.close();
  });
});
