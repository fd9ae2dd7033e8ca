import { join } from 'node:path';
import ts from 'typescript';
import { beforeAll, describe, expect, it } from 'vitest';
import { compilerOptions } from '../docs/compilerOptions.ts';
import { coreEntries, root } from '../docs/workspaceFiles.ts';
import { exportedNames } from './exportedNames.ts';

const sources = {
  calculators: 'index.ts',
  'calculators/hydrate': 'hydrate.tsx',
  'calculators/element': 'element.tsx',
  'calculators/ui': 'ui/index.ts',
  'calculators/live': 'live/index.ts',
};
const entries = [
  ...coreEntries().slice(1),
  ...Object.entries(sources).map(([name, file]) => ({
    name: `@windlass/${name}`,
    file: join(root, 'packages/calculators/src', file),
  })),
];

// A name that goes or changes breaks somebody's program. `npm run vitest -- tests/packages -u` writes the lists.
describe('the exported names are those that are listed', () => {
  let program: ts.Program;

  beforeAll(() => {
    program = ts.createProgram(
      [...coreEntries(), ...entries].map(({ file }) => file),
      compilerOptions,
    );
  }, 120_000);

  it('of the core entry: all of its folders, but for the one that brings a validator', () => {
    const [whole, ...folders] = coreEntries();
    const names = folders
      .filter(({ name }) => name !== '@windlass/core/schema')
      .flatMap(({ file }) => exportedNames(program, file));
    expect(exportedNames(program, whole?.file ?? '')).toEqual([...new Set(names)].sort());
  });

  it.each(entries)('$name', async ({ name, file }) => {
    const list = `exports/${name.replace('@windlass/', '').replace('/', '.')}.txt`;
    await expect(`${exportedNames(program, file).join('\n')}\n`).toMatchFileSnapshot(list);
  });
});
