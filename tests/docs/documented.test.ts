import ts from 'typescript';
import { beforeAll, describe, expect, it } from 'vitest';
import { compilerOptions } from './compilerOptions.ts';
import { undocumentedExports } from './undocumentedExports.ts';
import { coreEntries } from './workspaceFiles.ts';

const entries = coreEntries();

describe('every exported name of the core package has a doc comment', () => {
  let program: ts.Program;

  beforeAll(() => {
    program = ts.createProgram(
      entries.map(({ file }) => file),
      compilerOptions,
    );
  }, 120_000);

  it.each(entries)('$name', ({ file }) => {
    expect(undocumentedExports(program, file)).toEqual([]);
  });
});
