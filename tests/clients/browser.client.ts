import { execFile, spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';
import { promisify } from 'node:util';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { bring, newProject } from './project.js';

const browser = ['chromium', 'chromium-browser', 'google-chrome'].find(
  (name) => spawnSync(name, ['--version']).status === 0,
);
const types: Record<string, string> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.mjs': 'text/javascript',
};

/** Serves the files of a folder to this machine alone. */
function serve(folder: string): Promise<Server> {
  const server = createServer(({ url = '/' }, response) => {
    const path = normalize(new URL(url, 'http://localhost').pathname);
    try {
      const text = readFileSync(join(folder, path));
      response.setHeader('content-type', types[extname(path)] ?? 'text/plain').end(text);
    } catch {
      response.writeHead(404).end();
    }
  });
  return new Promise((listening) => server.listen(0, '127.0.0.1', () => listening(server)));
}

let server: Server;
beforeAll(async () => {
  const project = newProject('browser');
  for (const program of ['page.html', 'page.js']) bring(project, program);
  server = await serve(project);
});
afterAll(() => server.close());

test.skipIf(!browser)('a browser loads the ES modules as they are (skipped without Chromium)', async () => {
  const { port } = server.address() as AddressInfo;
  const flags = ['--headless', '--no-sandbox', '--disable-gpu', '--virtual-time-budget=20000', '--dump-dom'];
  const page = `http://127.0.0.1:${port}/page.html`;
  const { stdout } = await promisify(execFile)(browser ?? '', [...flags, page], { timeout: 120_000 });
  const found = JSON.parse(/<body>\s*(\{.*?\})/s.exec(stdout)?.[1] ?? '{}');
  expect(found.pH).toBeCloseTo(7 - Math.log10((1 + Math.sqrt(5)) / 2), 14);
  expect(found.exactPH).toBe('6.791012359750021266230727910762');
  expect(found.blackToWhite).toBeCloseTo(100, 9);
});
