// `REDIS_URL=… node queue/worker.mjs`: one process for each core, on this machine and on others, started and ended at any time.
import { hostname } from 'node:os';
import { Worker } from 'bullmq';
import { pHsOfCurves } from '../curves.mjs';
import { connectionTo, queueName } from './server.mjs';

/** ms after which the job of a silent worker is given to another: far more than a chunk takes, since in one it gives no sign of life. */
const [patience = 30_000] = process.argv.slice(2).map(Number);

const worker = new Worker(
  queueName,
  async ({ data }) => Buffer.from(pHsOfCurves(data).buffer).toString('base64'), // results travel as text
  {
    connection: await connectionTo(),
    name: `${hostname()} ${process.pid}`,
    lockDuration: patience,
    stalledInterval: patience,
    maxStalledCount: 10, // after so many deaths a job counts as what kills its workers, and fails
  },
);
worker.on('error', ({ message }) => console.error(message)); // the server has gone: it tries again by itself
for (const signal of ['SIGINT', 'SIGTERM']) process.once(signal, () => worker.close());
