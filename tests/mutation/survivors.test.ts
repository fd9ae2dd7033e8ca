import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { root } from '../docs/workspaceFiles.ts';
import { explained } from './survivors.ts';

it('explains no change to a line that is not there any more', () => {
  const linesOf = (file: string) =>
    new Set(
      readFileSync(join(root, file), 'utf8')
        .split('\n')
        .map((line) => line.trim()),
    );
  const gone = explained.filter(({ file, line }) => !linesOf(file).has(line));
  expect(gone.map(({ file, line }) => `${file}: ${line}`)).toEqual([]);
});
