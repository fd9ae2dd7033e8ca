// What every command needs first: the pinned packages installed, the pinned Node found, builds up to date.
// Runs on whatever Node started npm (20 or later), so it uses nothing that is not in Node itself.
import { spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = dirname(dirname(fileURLToPath(import.meta.url)));

const windows = process.platform === 'win32';
const manifest = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
/** The package manager, with the version that the lock file was written by. */
export const pnpm = `pnpm@${manifest.config.pnpm}`;
const pinnedBin = join(root, 'node_modules', 'node', 'bin');

/** A command that did not do its work; `message` says what to do about it. */
export class CommandError extends Error {}

/**
 * Runs a program with the pinned Node first on the path. `output` is kept for the caller when
 * `quiet`, shown as it comes otherwise; with `aside` all of it goes to the error stream.
 */
export function run(command, args, { cwd = root, quiet = false, aside = false, env = {} } = {}) {
  return new Promise((resolve, reject) => {
    const child = spawn(command, args, {
      cwd,
      shell: windows,
      stdio: quiet ? ['ignore', 'pipe', 'pipe'] : ['inherit', aside ? 2 : 'inherit', 'inherit'],
      env: {
        ...process.env,
        ASTRO_TELEMETRY_DISABLED: '1',
        PATH: `${pinnedBin}${windows ? ';' : ':'}${process.env.PATH}`,
        ...env,
      },
    });
    let output = '';
    const keep = (chunk) => {
      output += chunk;
    };
    child.stdout?.on('data', keep);
    child.stderr?.on('data', keep);
    child.on('error', reject);
    child.on('close', (status, signal) => resolve({ status: status ?? signal, output }));
  });
}

/** Runs a program that a package of the workspace has installed. */
export function runBin(name, args, options = {}) {
  const home = options.cwd ?? root;
  const local = join(home, 'node_modules', '.bin', windows ? `${name}.cmd` : name);
  return run(local, args, options);
}

/** Runs a JavaScript or TypeScript file on the pinned Node. */
export function runFile(file, args = [], options = {}) {
  return run(join(pinnedBin, windows ? 'node.exe' : 'node'), [file, ...args], options);
}

/** Installs the pinned packages when the lock file or a manifest has changed since the last time. */
export async function ensureInstalled(say = console.error) {
  const stamp = join(root, 'node_modules', '.windlass-installed');
  const wanted = digest(['pnpm-lock.yaml', 'pnpm-workspace.yaml', ...manifests()]);
  if (existsSync(stamp) && readFileSync(stamp, 'utf8') === wanted) return;
  say('Installing the pinned runtime and packages…');
  const args = ['--yes', pnpm, 'install', '--frozen-lockfile'];
  const { status } = await run('npx', args, { aside: true });
  if (status !== 0) throw new CommandError(installHelp(status));
  const check = await runFile('--version', [], { quiet: true });
  if (check.status !== 0) {
    throw new CommandError(
      `The pinned Node ${manifest.devDependencies.node} was installed but does not run here:\n${check.output}\n` +
        'Delete node_modules and run the command again. If it stays, this system has no prebuilt Node of that version.',
    );
  }
  writeFileSync(stamp, wanted);
}

function installHelp(status) {
  return [
    `The packages could not be installed (npx ${pnpm} install ended with ${status}).`,
    '  - Is the network there, and does npm reach its registry?  npm ping',
    '  - Behind a proxy?                                         npm config set https-proxy <address>',
    '  - Is the disk full, or was an earlier install cut off?    delete node_modules and run this again',
  ].join('\n');
}

/** Builds what has changed: `target` is core, calculators or site, and brings what it is built on. */
export async function ensureBuilt(target, say = console.error) {
  for (const step of buildSteps.slice(0, buildSteps.findIndex(({ name }) => name === target) + 1)) {
    const stamp = join(root, '.cache', `built-${step.name}`);
    const wanted = digest(step.inputs.flatMap(filesBelow));
    const fresh =
      existsSync(join(root, step.output)) &&
      existsSync(stamp) &&
      readFileSync(stamp, 'utf8') === wanted;
    if (fresh) continue;
    say(`Building ${step.name}…`);
    rmSync(stamp, { force: true });
    // Files of an earlier build would be packed with those of this one.
    rmSync(join(root, dirname(step.output)), { recursive: true, force: true });
    const cwd = join(root, step.folder);
    const result = await runBin(step.bin, step.args, { cwd, quiet: true, env: step.env });
    if (result.status !== 0)
      throw new CommandError(`Building ${step.name} failed:\n${result.output}`);
    mkdirSync(dirname(stamp), { recursive: true });
    writeFileSync(stamp, wanted);
  }
}

const libraryInputs = ['tsconfig.base.json', 'pnpm-lock.yaml', 'packages/core'];
const calculatorInputs = [...libraryInputs, 'packages/calculators'];
const siteInputs = [
  ...calculatorInputs,
  'site',
  'examples/boathouse',
  'README.md',
  'THIRD-PARTY.md',
];
const buildSteps = [
  {
    name: 'core',
    folder: 'packages/core',
    bin: 'tsup',
    args: ['--silent'],
    inputs: libraryInputs,
    output: 'packages/core/dist/modules/index.js',
  },
  {
    name: 'calculators',
    folder: 'packages/calculators',
    bin: 'tsup',
    args: ['--silent'],
    inputs: calculatorInputs,
    output: 'packages/calculators/dist/index.js',
  },
  {
    name: 'site in German',
    folder: 'site',
    bin: 'astro',
    args: ['build', '--silent'],
    env: { WINDLASS_LANGUAGE: 'de' },
    inputs: siteInputs,
    output: 'site/.cache/de/index.html',
  },
  {
    name: 'site',
    folder: 'site',
    bin: 'astro',
    args: ['build', '--silent'],
    inputs: siteInputs,
    output: 'site/dist/index.html',
  },
];

function manifests() {
  const folders = ['', 'packages/core', 'packages/calculators', 'site', 'examples', 'tests'];
  return folders
    .map((folder) => join(folder, 'package.json'))
    .filter((file) => existsSync(join(root, file)));
}

const generated = new Set(['node_modules', 'dist', '.astro', '.cache', 'reference-generated']);

function filesBelow(path) {
  const full = join(root, path);
  if (!existsSync(full)) return [];
  if (!statSync(full).isDirectory()) return [path];
  return readdirSync(full, { withFileTypes: true })
    .filter((item) => !generated.has(item.name))
    .flatMap((item) => filesBelow(join(path, item.name)));
}

function digest(files) {
  const hash = createHash('sha256');
  for (const file of [...files].sort()) {
    hash
      .update(file)
      .update('\0')
      .update(readFileSync(join(root, file)))
      .update('\0');
  }
  return hash.digest('hex');
}

/** Runs a command's work and turns what it could not do into a message and a failing exit. */
export async function main(work) {
  try {
    await work();
  } catch (error) {
    if (!(error instanceof CommandError)) throw error;
    console.error(`\n${error.message}`);
    process.exitCode = 1;
  }
}
