// `node arrow/main.mjs setups.arrow points.arrow`: a file of set-ups to a file of points, both in Arrow's IPC format.
import { createWriteStream } from 'node:fs';
import { open } from 'node:fs/promises';
import { pipeline } from 'node:stream/promises';
import { RecordBatchFileWriter, RecordBatchReader } from 'apache-arrow';
import { pointsOf } from './points.mjs';

const [from, to] = process.argv.slice(2);
const setups = await RecordBatchReader.from(await open(from));
await pipeline(pointsOf(setups), RecordBatchFileWriter.throughNode(), createWriteStream(to));
