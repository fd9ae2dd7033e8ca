import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { commentExamples } from './commentExamples.ts';
import type { Example } from './Example.ts';
import { pageExamples } from './pageExamples.ts';
import { runExample } from './runExample.ts';
import { typeErrors } from './typeErrors.ts';
import { pageFiles, root, sourceFiles } from './workspaceFiles.ts';

const read = (file: string) => readFileSync(join(root, file), 'utf8');
const examples: readonly Example[] = [
  ...sourceFiles().flatMap((file) => commentExamples(file, read(file))),
  ...pageFiles().flatMap((file) => pageExamples(file, read(file))),
];

describe('every example of the documentation', () => {
  let errors: readonly (readonly string[])[] = [];

  beforeAll(() => {
    errors = typeErrors(examples);
  }, 120_000);

  it('is found', () => {
    expect(examples.length).toBeGreaterThan(0);
  });

  it.each(
    examples.map((example, index) => [`${example.file}:${example.line}`, example, index] as const),
  )('%s compiles, runs and gives the values it shows', async (_, example, index) => {
    expect(errors[index]).toEqual([]);
    expect(await runExample(example)).toEqual([]);
  });
});
