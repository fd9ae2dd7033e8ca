import ts from 'typescript';
import type { Example } from './Example.ts';
import { mismatch } from './mismatch.ts';
import { readLiteral } from './readLiteral.ts';
import { type ShownValue, shownValues } from './shownValues.ts';

type Run = (require: unknown, exports: object, shown: unknown) => Promise<void>;
const AsyncFunction = (async () => {}).constructor as new (...source: string[]) => Run;

/** Runs an example and lists where it shows another value than it gives, and what it throws. */
export async function runExample({ code }: Example): Promise<readonly string[]> {
  if (code.trim() === '') return ['the example has no ts block'];
  const complaints: string[] = [];
  const values = shownValues(code);
  const shown = (index: number, actual: unknown) => {
    const { line = 0, comment = '' } = values[index] ?? {};
    const literal = readLiteral(comment);
    const complaint =
      literal === undefined
        ? `the comment is no value to compare with: ${comment}`
        : mismatch(actual, literal);
    if (complaint !== undefined) complaints.push(`line ${line}: ${complaint}`);
    return actual;
  };
  try {
    const modules = await importAll(code);
    const require = (name: string) => modules.get(name);
    const script = toScript(code, values);
    await new AsyncFunction('require', 'exports', 'shown', script)(require, {}, shown);
  } catch (error) {
    complaints.push(String(error));
  }
  return complaints;
}

/** The example as a script that hands each value it shows to `shown`. */
function toScript(code: string, values: readonly ShownValue[]): string {
  let marked = code;
  for (const [index, { start, end }] of [...values.entries()].reverse()) {
    marked = `${marked.slice(0, start)}shown(${index}, ${marked.slice(start, end)})${marked.slice(end)}`;
  }
  const compilerOptions = { module: ts.ModuleKind.CommonJS, target: ts.ScriptTarget.ES2023 };
  return ts.transpileModule(marked, { compilerOptions }).outputText;
}

async function importAll(code: string): Promise<ReadonlyMap<string, unknown>> {
  const { importedFiles } = ts.preProcessFile(code);
  const names = importedFiles.map(({ fileName }) => fileName);
  return new Map(await Promise.all(names.map(async (name) => [name, await import(name)] as const)));
}
