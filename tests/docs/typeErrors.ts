import { join } from 'node:path';
import ts from 'typescript';
import { compilerOptions } from './compilerOptions.ts';
import type { Example } from './Example.ts';
import { root } from './workspaceFiles.ts';

/** What the compiler says about examples, each as a module of its own, in their order. */
export function typeErrors(examples: readonly Example[]): readonly (readonly string[])[] {
  const files = examples.map((_, index) => join(root, 'tests/docs', `example-${index}.ts`));
  const codes = new Map(files.map((file, index) => [file, examples[index]?.code ?? '']));
  const host = ts.createCompilerHost(compilerOptions);
  const inMemory: ts.CompilerHost = {
    ...host,
    fileExists: (file) => codes.has(file) || host.fileExists(file),
    readFile: (file) => codes.get(file) ?? host.readFile(file),
    getSourceFile: (file, target, ...rest) => {
      const code = codes.get(file);
      return code === undefined
        ? host.getSourceFile(file, target, ...rest)
        : ts.createSourceFile(file, code, target);
    },
    getCurrentDirectory: () => root,
  };
  const program = ts.createProgram(files, compilerOptions, inMemory);
  return files.map((file) => {
    const source = program.getSourceFile(file);
    return [
      ...program.getSyntacticDiagnostics(source),
      ...program.getSemanticDiagnostics(source),
    ].map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, ' '));
  });
}
