import { spawn } from 'node:child_process';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))));

export interface ServedSite {
  readonly origin: string;
  stop(): void;
}

/** The built site, served as `npm start` does, on a free port; or another folder, on a given port. */
export async function serveSite({ port = 0, site = '' } = {}): Promise<ServedSite> {
  const server = spawn(process.execPath, [
    join(root, 'scripts/serve.mjs'),
    ...['--port', String(port), '--quiet', ...(site === '' ? [] : ['--site', site])],
  ]);
  let output = '';
  const origin = await new Promise<string>((resolve, reject) => {
    const read = (chunk: Buffer) => {
      output += chunk;
      const match = /http:\/\/localhost:\d+/.exec(output);
      if (match) resolve(match[0]);
    };
    server.stdout.on('data', read);
    server.stderr.on('data', read);
    server.on('exit', () => reject(new Error(`the site could not be served:\n${output}`)));
  });
  return { origin, stop: () => void server.kill() };
}
