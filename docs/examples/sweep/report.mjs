// Runs a sweep from the command line: progress, Ctrl-C, points per second and the envelope of the curves.
import { volumes } from './curves.mjs';
import { newEnvelope } from './envelope.mjs';

/** @param {(options: object) => Promise<void>} sweep - of the pool or of the queue, with all that it needs but these */
export async function report(curves, sweep) {
  const stop = new AbortController();
  process.once('SIGINT', () => stop.abort());
  const envelope = newEnvelope();
  const start = performance.now();
  try {
    await sweep({
      curves,
      signal: stop.signal,
      onChunk: envelope.take,
      onProgress: (done) => process.stderr.write(`\r${done} of ${curves} curves`),
    });
  } catch (error) {
    if (error.name !== 'AbortError') throw error;
    console.log('\nstopped');
    return;
  }
  const seconds = (performance.now() - start) / 1000;
  const rate = ((curves * volumes.length) / seconds).toExponential(1);
  console.log(`\n${curves} curves of ${volumes.length} points: ${seconds.toFixed(1)} s, ${rate} points/s`);
  for (const line of envelope.lines()) console.log(line);
}
