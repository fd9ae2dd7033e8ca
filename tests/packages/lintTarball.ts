import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { publint } from 'publint';
import { formatMessage } from 'publint/utils';
import { run } from './run.ts';

/** Throws with everything that publint says about a tarball. */
export async function lintTarball(tarball: string): Promise<void> {
  const bytes = readFileSync(tarball);
  const { messages, pkg } = await publint({
    strict: true,
    pack: { tarball: bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength) },
  });
  if (messages.length > 0)
    throw new Error(messages.map((message) => formatMessage(message, pkg)).join('\n'));
}

/** Throws where types of a tarball do not resolve; style sheets, which have none, are passed over. */
export function requireTypes(tarball: string, root: string, folder: string): void {
  const { exports } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  const sheets = Object.keys(exports).filter((entry) => entry.endsWith('.css'));
  const passedOver = sheets.length > 0 ? ['--exclude-entrypoints', ...sheets] : [];
  const attw = join(root, 'tests/node_modules/.bin/attw');
  run(attw, [tarball, '--profile', 'esm-only', '--no-color', ...passedOver], root);
}
