import { execFile, spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';
import { promisify } from 'node:util';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { expectAnswers } from './expected.js';
import { bring, newProject, tool } from './project.js';
import { run } from './run.js';

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
  const project = newProject('browser', ['esbuild@0.28.2']);
  const programs = ['page.html', 'page.js', 'bundled.html', 'everything.js', 'answers.js'];
  for (const program of programs) bring(project, program);
  const options = ['--bundle', '--minify', '--format=esm', '--outfile=bundled.js'];
  run(tool(project, 'esbuild'), ['everything.js', ...options], project);
  server = await serve(project);
});
afterAll(() => server.close());

/** The text that a page shows once its scripts have run. */
async function shownBy(name: string): Promise<string> {
  const { port } = server.address() as AddressInfo;
  const flags = ['--headless', '--no-sandbox', '--disable-gpu', '--virtual-time-budget=20000', '--dump-dom'];
  const page = `http://127.0.0.1:${port}/${name}`;
  const { stdout } = await promisify(execFile)(browser ?? '', [...flags, page], { timeout: 120_000 });
  return /<body>\s*(\{.*\})\s*<\/body>/s.exec(stdout)?.[1] ?? stdout;
}

test.skipIf(!browser)('a browser loads the ES modules as they are (skipped without Chromium)', async () => {
  const found = JSON.parse(await shownBy('page.html'));
  expect(found.pH).toBeCloseTo(7 - Math.log10((1 + Math.sqrt(5)) / 2), 14);
  expect(found.exactPH).toBe('6.791012359750021266230727910762');
  expect(found.blackToWhite).toBeCloseTo(100, 9);
  expect(found.picture).toBe('Powder');
  expect(found.heading).toBe('Powder');
});

test.skipIf(!browser)('a browser runs every entry from a bundle (skipped without Chromium)', async () =>
  expectAnswers(await shownBy('bundled.html')),
);
