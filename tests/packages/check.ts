// Packs both packages and meets them as their users do: publint, are-the-types-wrong, and a project
// outside the workspace that installs the tarballs, compiles against their types and runs.
import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { publint } from 'publint';
import { formatMessage } from 'publint/utils';

const here = dirname(fileURLToPath(import.meta.url));
const root = dirname(dirname(here));
const { config } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
const pnpm = `pnpm@${config.pnpm}`;
const scratch = mkdtempSync(join(tmpdir(), 'windlass-packages-'));
let failed = false;

for (const name of ['core', 'calculators']) {
  const folder = join(root, 'packages', name);
  const to = join(scratch, name);
  run('npx', ['--yes', pnpm, 'pack', '--pack-destination', to], folder);
  const tarball = join(to, readdirSync(to)[0] as string);
  await lint(name, tarball);
  judge(`${name}: types resolve`, () =>
    run(
      join(root, 'tests/node_modules/.bin/attw'),
      [tarball, '--profile', 'esm-only', '--no-color', ...withoutStylesheets(folder)],
      root,
    ),
  );
}

const consumer = join(scratch, 'consumer');
cpSync(join(here, 'consumer'), consumer, { recursive: true });
const tarballs = ['core', 'calculators'].map((name) => {
  const [file] = readdirSync(join(scratch, name));
  return [`@windlass/${name}`, `file:../${name}/${file}`] as const;
});
writeFileSync(
  join(consumer, 'package.json'),
  JSON.stringify({
    name: 'consumer',
    private: true,
    type: 'module',
    dependencies: Object.fromEntries(tarballs),
    overrides: { '@windlass/core': tarballs[0]?.[1] },
  }),
);
judge('consumer: installs', () =>
  run('npm', ['install', '--no-audit', '--no-fund', '--silent'], consumer),
);
judge('consumer: compiles with module nodenext', () =>
  run(join(root, 'node_modules/.bin/tsc'), ['-p', 'tsconfig.json'], consumer),
);
judge('consumer: runs', () => run(process.execPath, ['plan.ts'], consumer));

rmSync(scratch, { recursive: true, force: true });
process.exitCode = failed ? 1 : 0;

async function lint(name: string, tarball: string): Promise<void> {
  const bytes = readFileSync(tarball);
  const { messages, pkg } = await publint({
    strict: true,
    pack: { tarball: bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength) },
  });
  judge(`${name}: publint`, () => {
    if (messages.length > 0)
      throw new Error(messages.map((message) => formatMessage(message, pkg)).join('\n'));
  });
}

/** The option that passes over style sheets, which have no types to resolve. */
function withoutStylesheets(folder: string): readonly string[] {
  const { exports } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  const sheets = Object.keys(exports).filter((entry) => entry.endsWith('.css'));
  return sheets.length > 0 ? ['--exclude-entrypoints', ...sheets] : [];
}

function judge(what: string, work: () => void): void {
  try {
    work();
    console.log(`ok   ${what}`);
  } catch (error) {
    failed = true;
    console.log(`FAIL ${what}\n${error instanceof Error ? error.message : error}`);
  }
}

function run(command: string, args: readonly string[], cwd: string): void {
  try {
    execFileSync(command, args, { cwd, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });
  } catch (error) {
    const {
      stdout = '',
      stderr = '',
      message,
    } = error as { stdout?: string; stderr?: string; message: string };
    throw new Error(`${message}\n${stdout}${stderr}`);
  }
}
