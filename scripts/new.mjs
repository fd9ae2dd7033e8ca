// npm run new: the files of a calculator or of a core function, ready to run and to be made one's own.
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { calculatorFiles } from './new/calculatorFiles.mjs';
import { functionFiles } from './new/functionFiles.mjs';
import { CommandError, main, root } from './workspace.mjs';

const usage = `Say what to make:
  npm run new -- calculator rest-between-sets "Rest between sets" "How long is the rest before the next set?"
  npm run new -- function load/halveLoad "Half of a load"`;

/** Writes the files below `home` and returns their paths. Nothing is written when one of them exists. */
export function make(home, [kind, name = '', ...says]) {
  const read = (path) => readFileSync(join(home, path), 'utf8');
  if (kind === 'calculator') return write(home, calculatorFiles(checkedId(name), says, read));
  if (kind === 'function') return write(home, functionFiles(checkedPlace(home, name), says, read));
  throw new CommandError(usage);
}

function write(home, { made, changed }) {
  const there = made.filter(({ path }) => existsSync(join(home, path)));
  if (there.length > 0) {
    throw new CommandError(
      `Already there: ${there.map(({ path }) => path).join(', ')}. Choose another name.`,
    );
  }
  for (const { path, text } of [...made, ...changed]) {
    mkdirSync(dirname(join(home, path)), { recursive: true });
    writeFileSync(join(home, path), text);
  }
  return [...made, ...changed].map(({ path }) => path);
}

function checkedId(id) {
  if (/^[a-z]+(-[a-z]+)*$/.test(id)) return id;
  throw new CommandError(
    `The id of a calculator is also its address: lower case with hyphens, not "${id}".\n${usage}`,
  );
}

function checkedPlace(home, place) {
  const [folder = '', name = '', ...more] = place.split('/');
  const isFolder = existsSync(join(home, 'packages/core/src', folder, 'index.ts'));
  if (isFolder && /^[a-z][A-Za-z0-9]*$/.test(name) && more.length === 0) return { folder, name };
  throw new CommandError(
    `A function is named by a folder of packages/core/src and a camelCase name, not "${place}".\n${usage}`,
  );
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  await main(() => {
    for (const path of make(root, process.argv.slice(2))) console.log(path);
    console.log('\nNow run  npm run fix  and  npm run vitest -- packages  and read DEVELOPERS.md.');
  });
}
