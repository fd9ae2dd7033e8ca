import { execFile } from 'node:child_process';
import { cpSync, mkdtempSync, rmSync, symlinkSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { make } from '../../scripts/new.mjs';

const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))));
const run = promisify(execFile);
const bin = (name: string) => join(root, 'node_modules', '.bin', name);

/** A copy of the sources, with the packages installed for the project itself. */
let home: string;

beforeAll(() => {
  home = mkdtempSync(join(root, '.generated-'));
  const copied = ['packages/core/src', 'packages/core/tsconfig.json', 'packages/calculators/src'];
  const besides = [
    'packages/calculators/tsconfig.json',
    'tests/setup',
    'tsconfig.base.json',
    'vitest.config.ts',
  ];
  for (const path of [...copied, ...besides])
    cpSync(join(root, path), join(home, path), { recursive: true });
  for (const path of [
    'node_modules',
    'packages/core/node_modules',
    'packages/calculators/node_modules',
  ]) {
    symlinkSync(join(root, path), join(home, path));
  }
});
afterAll(() => rmSync(home, { recursive: true }));

describe('npm run new', () => {
  it('makes a calculator that compiles, and that the contract test accepts', async () => {
    const made = make(home, ['calculator', 'share-of-load', 'Share of a load', 'How much is it?']);
    expect(made).toContain('packages/calculators/src/share-of-load/definition.ts');
    await run(bin('tsc'), ['-p', join(home, 'packages/calculators')]);
    const tests = ['contract.test.ts', 'share-of-load'].map(
      (path) => `packages/calculators/src/${path}`,
    );
    await run(bin('vitest'), ['run', ...tests, '-t', 'share-of-load|the list of calculators'], {
      cwd: home,
    });
  });

  it('makes a core function whose tests pass', async () => {
    make(home, ['function', 'load/halveLoad', 'Half of a load']);
    await run(bin('vitest'), ['run', 'packages/core/src/load/halveLoad'], { cwd: home });
  });

  it('overwrites nothing, and says what a name has to be', () => {
    expect(() => make(home, ['calculator', 'pair'])).toThrow(/Already there: .*pair.words\.ts/);
    expect(() => make(home, ['calculator', 'Pair'])).toThrow(/lower case with hyphens/);
    expect(() => make(home, ['function', 'nowhere/atAll'])).toThrow(/folder of packages.core.src/);
    expect(() => make(home, [])).toThrow(/npm run new -- calculator/);
  });
});
