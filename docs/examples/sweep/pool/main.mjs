// `node pool/main.mjs 1000000 2`: that many curves on that many threads. Ctrl-C ends it in good order.
import { report } from '../report.mjs';
import { sweep } from './sweep.mjs';

const [curves = 20_000, threads] = process.argv.slice(2).map(Number);
await report(curves, (options) => sweep({ ...options, threads }));
