import type ts from 'typescript';
import { moduleExports } from './moduleExports.ts';

/** Names that a module exports and that have no doc comment where they are declared. */
export function undocumentedExports(program: ts.Program, file: string): readonly string[] {
  const checker = program.getTypeChecker();
  return moduleExports(program, file)
    .filter(({ declared }) => declared.getDocumentationComment(checker).length === 0)
    .map(({ name }) => name);
}
