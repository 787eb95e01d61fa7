// A number of curves in chunks, so many of them in flight at a time.

/**
 * @param {{ curves: number, chunkSize: number, inFlight: number, signal?: AbortSignal, onProgress: (done: number) => void }} options -
 *   once the signal is aborted no chunk is begun, and it rejects
 * @param {(chunk: { from: number, count: number }) => Promise<void>} each - what is done with a chunk
 */
export async function inChunks({ curves, chunkSize, inFlight, signal, onProgress }, each) {
  let next = 0;
  let done = 0;
  const feed = async () => {
    while (next < curves) {
      signal?.throwIfAborted();
      const from = next;
      const count = Math.min(chunkSize, curves - from);
      next += count;
      await each({ from, count });
      done += count;
      onProgress(done);
    }
  };
  await Promise.all(Array.from({ length: inFlight }, feed));
}
