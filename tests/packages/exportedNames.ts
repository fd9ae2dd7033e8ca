import ts from 'typescript';
import { moduleExports } from '../docs/moduleExports.ts';

/** The names that a module exports, sorted, each with `type` before it where it is gone at run time. */
export function exportedNames(program: ts.Program, file: string): readonly string[] {
  return moduleExports(program, file)
    .map(({ name, declared }) =>
      (declared.flags & ts.SymbolFlags.Value) === 0 ? `type ${name}` : name,
    )
    .sort();
}
