import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { undocumentedExports } from './undocumentedExports.ts';

function undocumentedIn(source: string): readonly string[] {
  const options = { noLib: true, types: [] };
  const host = ts.createCompilerHost(options);
  const program = ts.createProgram(['entry.ts'], options, {
    ...host,
    getSourceFile: (file, target) =>
      file === 'entry.ts' ? ts.createSourceFile(file, source, target) : undefined,
  });
  return undocumentedExports(program, 'entry.ts');
}

describe('undocumentedExports', () => {
  it('names what is exported without words, by whatever way', () => {
    const source = [
      '/** Documented. */ export const told = 1;',
      'export const silent = 1;',
      'export interface Silent { readonly a: string }',
      '/** Documented. */ function inner() {} export { inner as renamed };',
      'function hidden() {} export { hidden as shown };',
      'const own = 1;',
    ].join('\n');
    expect(undocumentedIn(source)).toEqual(['silent', 'Silent', 'shown']);
  });
});
