// node examples/embedding/serve.ts: both pages on this machine, the built calculators beside them as windlass/.
import { readFile } from 'node:fs/promises';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { dirname, extname, join, normalize } from 'node:path';
import { fileURLToPath } from 'node:url';

const pages = import.meta.dirname;
const calculators = dirname(dirname(fileURLToPath(import.meta.resolve('@windlass/calculators'))));
const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
};

/** Serves the example pages; the address is in `origin`. */
export async function serveEmbedding(port = 0): Promise<{ origin: string; server: Server }> {
  const server = createServer(async ({ url = '/' }, response) => {
    const path = normalize(new URL(url, 'http://localhost').pathname);
    const inFolder = path.startsWith('/windlass/')
      ? join(calculators, 'dist/standalone', path.slice('/windlass/'.length))
      : join(pages, path === '/' ? 'plain.html' : path);
    try {
      const body = await readFile(inFolder);
      response.setHeader('Content-Type', types[extname(inFolder)] ?? 'application/octet-stream');
      response.end(body);
    } catch {
      response.writeHead(404).end();
    }
  });
  await new Promise<void>((ready) => server.listen(port, 'localhost', ready));
  return { origin: `http://localhost:${(server.address() as AddressInfo).port}`, server };
}

if (import.meta.main) {
  const { origin } = await serveEmbedding(4174);
  console.log(`${origin}/plain.html\n${origin}/strict-policy.html`);
}
