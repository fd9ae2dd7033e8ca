import { spawn } from 'node:child_process';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))));

/** The built site, served as `npm start` does, on a free port. */
export async function serveSite(): Promise<{ readonly origin: string; stop(): void }> {
  const server = spawn(process.execPath, [
    join(root, 'scripts/serve.mjs'),
    '--port',
    '0',
    '--quiet',
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
