// `node main.mjs 1000000 2`: that many curves on that many threads. Ctrl-C ends it in good order.
import { volumes } from './chunk.mjs';
import { sweep } from './sweep.mjs';

const [curves = 20_000, threads] = process.argv.slice(2).map(Number);
const stop = new AbortController();
process.once('SIGINT', () => stop.abort());

const lowest = new Float64Array(volumes.length).fill(Infinity);
const highest = new Float64Array(volumes.length).fill(-Infinity);
const start = performance.now();
try {
  await sweep({
    curves,
    threads,
    signal: stop.signal,
    onChunk: ({ count, pHs }) => {
      pHs.forEach((pH, row) => {
        const v = Math.floor(row / count);
        lowest[v] = Math.min(lowest[v], pH);
        highest[v] = Math.max(highest[v], pH);
      });
    },
    onProgress: (done) => process.stderr.write(`\r${done} of ${curves} curves`),
  });
  const seconds = (performance.now() - start) / 1000;
  const rate = (curves * volumes.length) / seconds;
  console.log(
    `\n${curves} curves of ${volumes.length} points: ${seconds.toFixed(1)} s, ${rate.toExponential(1)} points/s`,
  );
  for (const mL of [0, 10, 18, 30, 36, 45])
    console.log(`${mL} mL: pH ${lowest[2 * mL].toFixed(2)} to ${highest[2 * mL].toFixed(2)}`);
} catch (error) {
  if (error.name !== 'AbortError') throw error;
  console.log('\nstopped');
}
