// Usage: run.ts [folder …]. Prints a line a folder and every survivor that nobody has explained.
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { root } from '../docs/workspaceFiles.ts';
import { isExplained, placeOf } from './survivors.ts';
import { type Mutant, tryMutants } from './tryMutants.ts';

/** Share of mutants that a folder's own tests notice, or that are explained, in percent. */
const LEAST = 90;

const asked = process.argv.slice(2);
const folders = readdirSync(join(root, 'packages/core/src'), { withFileTypes: true })
  .filter((item) => item.isDirectory())
  .map(({ name }) => name);
const unknown = asked.filter((name) => !folders.includes(name));
if (unknown.length > 0) {
  console.error(
    `There is no folder ${unknown.join(', ')} in core; there are ${folders.join(', ')}.`,
  );
  process.exit(2);
}

const told: string[] = [];
for (const folder of asked.length > 0 ? asked : folders) {
  told.push(report(folder, await tryMutants(folder)));
}
console.log(`\n${told.join('\n')}`);

function report(folder: string, mutants: readonly Mutant[]): string {
  const noticed = mutants.filter(({ status }) => status === 'Killed' || status === 'Timeout');
  const survivors = mutants.filter(
    ({ status }) => status === 'Survived' || status === 'NoCoverage',
  );
  const places = survivors.map((mutant) => placeOf(mutant, root));
  const open = places.filter((place) => !isExplained(place));
  const total = noticed.length + survivors.length;
  const percent = (count: number) => ((100 * count) / Math.max(1, total)).toFixed(1);
  if (100 * (total - open.length) < LEAST * total) process.exitCode = 1;
  return [
    ...open.map(
      (place) => `${place.file}:${place.number}  ${place.line}  →  ${oneLine(place.replacement)}`,
    ),
    `${folder}: ${percent(noticed.length)} % of ${total} noticed; with ${survivors.length - open.length} explained ${percent(total - open.length)} %`,
  ].join('\n');
}

function oneLine(text: string): string {
  return text.replace(/\s+/g, ' ').slice(0, 80);
}
