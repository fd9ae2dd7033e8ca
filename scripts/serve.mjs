// Serves the built site on this machine, with the headers a host should send, and opens the planner.
import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import open from 'open';
import sirv from 'sirv';
import { cacheControl } from '../site/offline/cacheControl.ts';
import { securityHeaders } from '../site/src/lib/security.ts';
import { root } from './workspace.mjs';

const usualPort = 4180;
const portsToTry = 20;

const { values } = parseArgs({
  options: {
    port: { type: 'string' },
    quiet: { type: 'boolean' },
    /** Another folder than the one that `npm start` builds. */
    site: { type: 'string', default: join(root, 'site', 'dist') },
  },
});
const asked = values.port ?? process.env.PORT;
const first = asked === undefined ? usualPort : Number(asked);
if (!Number.isInteger(first) || first < 0 || first > 65535) {
  console.error(
    `--port must be a whole number from 0 to 65535, got ${asked}. Example: npm start -- --port 4200`,
  );
  process.exit(2);
}

const notFound = readFileSync(join(values.site, '404.html'));
const files = sirv(values.site, {
  etag: true,
  setHeaders: (response, path) => response.setHeader('Cache-Control', cacheControl(path)),
});
const server = createServer((request, response) => {
  for (const [name, value] of Object.entries(securityHeaders)) response.setHeader(name, value);
  files(request, response, () => {
    response.writeHead(404, { 'Content-Type': 'text/html;charset=utf-8' }).end(notFound);
  });
});

listen(first);

function listen(port) {
  server.once('error', (error) => {
    if (error.code !== 'EADDRINUSE') throw error;
    if (port + 1 >= first + portsToTry) {
      console.error(
        `Ports ${first} to ${port} are all taken. Choose another: npm start -- --port 5000`,
      );
      process.exit(1);
    }
    console.log(`Port ${port} is taken, trying ${port + 1}.`);
    listen(port + 1);
  });
  server.listen(port, '127.0.0.1', ready);
}

function ready() {
  const address = `http://localhost:${server.address().port}/plan/`;
  console.log(`\nWindlass is at ${address}\nStop with Ctrl+C.`);
  const desktop = process.stdout.isTTY && !process.env.CI && !values.quiet;
  if (desktop) open(address).catch(() => {});
}

for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => process.exit(0));
