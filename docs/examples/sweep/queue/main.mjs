// `REDIS_URL=… node queue/main.mjs 1000000`: that many curves, by whatever workers there are. Ctrl-C ends it in good order.
import { report } from '../report.mjs';
import { connectionTo } from './server.mjs';
import { sweep } from './sweep.mjs';

const [curves = 20_000] = process.argv.slice(2).map(Number);
const connection = await connectionTo();
await report(curves, (options) => sweep({ ...options, connection }));
