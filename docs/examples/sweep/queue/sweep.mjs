// The sweep as jobs in a queue, for workers on any number of machines.
import { Queue, QueueEvents } from 'bullmq';
import { inChunks } from '../in-chunks.mjs';
import { queueName } from './server.mjs';

/**
 * Gives each chunk of curves to `onChunk` as { from, count, pHs }, in whatever order they end. A job's id says which curves it
 * has, and it is removed once its result is here: started again after its own end, the sweep takes up the results that wait.
 *
 * @param {{ connection: object, curves: number, chunkSize?: number, signal?: AbortSignal,
 *   onChunk: (chunk: { from: number, count: number, pHs: Float64Array }) => void,
 *   onProgress?: (done: number) => void }} options - an abort takes back the jobs that nobody has begun, and rejects
 */
export async function sweep({ connection, curves, chunkSize = 500, signal, onChunk, onProgress = () => {} }) {
  const queue = new Queue(queueName, { connection });
  const events = new QueueEvents(queueName, { connection });
  await events.waitUntilReady();
  const aborted = new Promise((_, reject) => {
    signal?.addEventListener('abort', () => reject(signal.reason));
  });
  aborted.catch(() => {}); // an abort after the end
  try {
    await inChunks({ curves, chunkSize, inFlight, signal, onProgress }, async (chunk) => {
      const job = await queue.add('chunk', chunk, { jobId: `curves-${chunk.from}-${chunk.count}` });
      const pHs = numbersIn(await Promise.race([job.waitUntilFinished(events), aborted]));
      onChunk({ ...chunk, pHs });
      await job.remove();
    });
  } catch (error) {
    await queue.drain();
    throw error;
  } finally {
    await Promise.all([events.close(), queue.close()]);
  }
}

/** Jobs in the queue at a time: enough for as many workers, and few enough for the server's memory. */
const inFlight = 64;

const numbersIn = (text) => new Float64Array(Uint8Array.from(Buffer.from(text, 'base64')).buffer);
