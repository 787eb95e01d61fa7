import { readFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';

const types: Record<string, string> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.mjs': 'text/javascript',
};

/** Serves the files of a folder to this machine alone. */
export function serve(folder: string): Promise<{ server: Server; address: string }> {
  const server = createServer(({ url = '/' }, response) => {
    const path = normalize(new URL(url, 'http://localhost').pathname);
    try {
      const text = readFileSync(join(folder, path));
      response.setHeader('content-type', types[extname(path)] ?? 'text/plain').end(text);
    } catch {
      response.writeHead(404).end();
    }
  });
  return new Promise((listening) =>
    server.listen(0, '127.0.0.1', () => {
      const { port } = server.address() as AddressInfo;
      listening({ server, address: `http://127.0.0.1:${port}/` });
    }),
  );
}
