import { join, resolve } from 'node:path';
import { type Exercise, exercises } from '@windlass/core/anatomy';
import { build } from 'esbuild';
import { describe, expect, it } from 'vitest';
import { languages, readCatalogue } from '../languages/readCatalogue.ts';
import { unreadColumns, workedOut } from './workedOut.ts';

const packages = resolve(import.meta.dirname, '../..');

describe('unreadColumns', () => {
  it('takes a column for read in every way that code can name it', () => {
    const code = `a.holds; const { loads, wayBack: way } = b; c['sides']; d["support"]; // stations`;
    const unread = unreadColumns(code);
    for (const read of ['holds', 'loads', 'wayBack', 'sides', 'support'])
      expect(unread.has(read)).toBe(false);
    expect(unread.has('stations')).toBe(true);
    expect(unread.has('eccentricFactor')).toBe(true);
  });
});

describe.each(languages)('what is worked out in %s', (language) => {
  it('has names in that language, and the same ids, which code compares', async () => {
    const { outputFiles } = await build({
      entryPoints: [join(packages, 'core/src/anatomy/exercises.ts')],
      plugins: [workedOut({ catalogue: readCatalogue(packages, language) })],
      bundle: true,
      format: 'esm',
      write: false,
    });
    const code = Buffer.from(outputFiles[0]?.text ?? '').toString('base64');
    const translated: { exercises: typeof exercises } = await import(
      /* @vite-ignore */ `data:text/javascript;base64,${code}`
    );
    const idsOf = ({ holds, loads, sides, wayBack, atFailureAlone, endurance }: Exercise) => [
      holds,
      loads,
      sides,
      wayBack,
      atFailureAlone,
      endurance,
    ];
    expect(translated.exercises.map(idsOf)).toEqual(exercises.map(idsOf));
    const namesOf = (list: typeof exercises) => list.map(({ name }) => name).join();
    expect(namesOf(translated.exercises)).not.toBe(namesOf(exercises));
  });
});
