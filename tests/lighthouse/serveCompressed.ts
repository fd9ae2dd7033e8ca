import { existsSync, readFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { cacheControl } from '../../site/offline/cacheControl.ts';
import { securityHeaders } from '../../site/src/lib/security.ts';

/** Chromium aborts the way in which Lighthouse opens a page that sends no referrer. */
const { 'Referrer-Policy': _, ...headers } = securityHeaders;

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html;charset=utf-8',
  '.css': 'text/css;charset=utf-8',
  '.js': 'text/javascript;charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.json': 'application/json',
  '.txt': 'text/plain;charset=utf-8',
  '.xml': 'application/xml',
  '.webmanifest': 'application/manifest+json',
  '.woff2': 'font/woff2',
};

/** The built site as a host serves it: compressed, with its headers. Gives its origin. */
export async function serveCompressed(
  folder: string,
): Promise<{ readonly origin: string; readonly server: Server }> {
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://here');
    const file = join(folder, pathname, pathname.endsWith('/') ? 'index.html' : '');
    if (!existsSync(file)) {
      response.writeHead(404).end();
      return;
    }
    const type = types[extname(file)] ?? 'application/octet-stream';
    const isText = !/^(?:image\/png|font|application\/octet)/.test(type);
    const content = readFileSync(file);
    response
      .writeHead(200, {
        ...headers,
        'Cache-Control': cacheControl(pathname),
        'Content-Type': type,
        ...(isText && { 'Content-Encoding': 'gzip' }),
      })
      .end(isText ? gzipSync(content) : content);
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  return { origin: `http://localhost:${(server.address() as AddressInfo).port}`, server };
}
