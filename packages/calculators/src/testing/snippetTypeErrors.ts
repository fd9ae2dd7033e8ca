import { fileURLToPath } from 'node:url';
import ts from 'typescript';

/** What the compiler says about snippets, against the sources of the core; nothing when all is well. */
export function snippetTypeErrors(snippets: readonly string[]): readonly string[] {
  const folder = fileURLToPath(new URL('../..', import.meta.url));
  const { config } = ts.readConfigFile(`${folder}tsconfig.json`, ts.sys.readFile);
  const { options } = ts.parseJsonConfigFileContent(config, ts.sys, folder);
  const host = ts.createCompilerHost(options);
  const files = new Map(snippets.map((code, at) => [`${folder}src/snippet${at}.ts`, code]));
  const { getSourceFile, fileExists } = host;
  host.fileExists = (name) => files.has(name) || fileExists(name);
  host.getSourceFile = (name, ...rest) => {
    const code = files.get(name);
    return code === undefined
      ? getSourceFile(name, ...rest)
      : ts.createSourceFile(name, code, ts.ScriptTarget.ES2023, true);
  };
  const program = ts.createProgram(
    [...files.keys()],
    { ...options, lib: ['lib.es2023.d.ts', 'lib.dom.d.ts'] },
    host,
  );
  return [...files.keys()].flatMap((name) =>
    ts
      .getPreEmitDiagnostics(program, program.getSourceFile(name))
      .map(({ messageText }) => `${name}: ${ts.flattenDiagnosticMessageText(messageText, ' ')}`),
  );
}
