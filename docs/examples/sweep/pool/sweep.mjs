// A sweep over all cores: chunks of curves to a pool of workers, results as they come, and an end at any moment.
import { Piscina } from 'piscina';
import { inChunks } from '../in-chunks.mjs';

/** Curves in a chunk: long enough that messages cost nothing, short enough that progress is seen. */
const chunkSize = 500;

/**
 * Gives each chunk of curves to `onChunk` as { from, count, pHs }, in whatever order they end. The arrays are transferred from the
 * workers, not copied; what `onChunk` does not keep is freed, so that memory does not grow with the number of curves.
 *
 * @param {{ curves: number, threads?: number, signal?: AbortSignal,
 *   onChunk: (chunk: { from: number, count: number, pHs: Float64Array }) => void,
 *   onProgress?: (done: number) => void }} options - an aborted signal stops the workers and rejects with an AbortError
 */
export async function sweep({ curves, threads, signal, onChunk, onProgress = () => {} }) {
  const pool = new Piscina({
    filename: new URL('./chunk.mjs', import.meta.url).href,
    ...(threads ? { minThreads: threads, maxThreads: threads } : {}),
  });
  const stop = () => pool.destroy();
  signal?.addEventListener('abort', stop);
  try {
    const inFlight = 2 * pool.options.maxThreads; // one at work and one waiting for each thread
    await inChunks({ curves, chunkSize, inFlight, signal, onProgress }, async (chunk) => {
      const pHs = await pool.run(chunk);
      onChunk({ ...chunk, pHs });
    });
  } catch (error) {
    signal?.throwIfAborted();
    throw error;
  } finally {
    signal?.removeEventListener('abort', stop);
    await pool.destroy();
  }
}
