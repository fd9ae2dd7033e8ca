import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { run } from './run.ts';

/** What the packages and their dependencies import from one another by name. */
const borrowed = [
  'preact',
  'preact/hooks',
  'preact/jsx-runtime',
  'preact-render-to-string',
  'zod/mini',
];

/** The import map of a page that is served from the consumer's folder: every entry by its address. */
export function importMap(consumer: string): string {
  const names = [
    ...entriesOf(consumer, 'core'),
    ...entriesOf(consumer, 'calculators'),
    ...borrowed,
  ];
  const code = `console.log(JSON.stringify(${JSON.stringify(names)}.map((name) => import.meta.resolve(name))))`;
  const found: readonly string[] = JSON.parse(
    run(process.execPath, ['--input-type=module', '-e', code], consumer),
  );
  const paths = found.map((url) => relative(consumer, fileURLToPath(url)).split(sep).join('/'));
  const imports = Object.fromEntries(names.map((name, at) => [name, `/${paths[at]}`]));
  return JSON.stringify({ imports });
}

/** The entries of a package that are modules, with the folders that a `*` stands for. */
function entriesOf(consumer: string, name: string): readonly string[] {
  const folder = join(consumer, 'node_modules/@windlass', name);
  const { exports } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  return Object.entries<Targets>(exports)
    .filter(([entry]) => !/\.(?:json|css)$/.test(entry))
    .flatMap(([entry, { default: file }]) =>
      entry.includes('*')
        ? foldersIn(join(folder, file.slice(0, file.indexOf('*')))).map((one) =>
            entry.replace('*', one),
          )
        : entry,
    )
    .map((entry) => `@windlass/${name}${entry.slice(1)}`);
}

/** Where an entry leads. */
interface Targets {
  readonly default: string;
}

function foldersIn(folder: string): readonly string[] {
  return readdirSync(folder, { withFileTypes: true })
    .filter((item) => item.isDirectory())
    .map(({ name }) => name);
}
