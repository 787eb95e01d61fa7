import { parentPort, workerData } from 'node:worker_threads';
import { fuzzAccuracy } from './accuracy.js';
import { fuzzCalls } from './calls.js';
import type { Order, Report } from './order.js';
import { fuzzSystems } from './systems.js';
import { Timed } from './timed.js';

const order: Order = workerData;
const tell = (report: Report): void => parentPort?.postMessage(report);

await fuzzCalls(order, new Timed(order.begun), tell);
fuzzSystems(order, new Timed(order.begun), tell);
fuzzAccuracy(order, new Timed(order.begun), tell);
