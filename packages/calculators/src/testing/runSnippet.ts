import { compileFunction } from 'node:vm';
import ts from 'typescript';

const entries: Readonly<Record<string, () => Promise<object>>> = {
  '@windlass/core/anatomy': () => import('@windlass/core/anatomy'),
  '@windlass/core/capacity': () => import('@windlass/core/capacity'),
  '@windlass/core/equipment': () => import('@windlass/core/equipment'),
  '@windlass/core/exchange': () => import('@windlass/core/exchange'),
  '@windlass/core/extension': () => import('@windlass/core/extension'),
  '@windlass/core/load': () => import('@windlass/core/load'),
  '@windlass/core/pairing': () => import('@windlass/core/pairing'),
  '@windlass/core/progress': () => import('@windlass/core/progress'),
  '@windlass/core/recovery': () => import('@windlass/core/recovery'),
  '@windlass/core/safety': () => import('@windlass/core/safety'),
  '@windlass/core/strength': () => import('@windlass/core/strength'),
  '@windlass/core/tempo': () => import('@windlass/core/tempo'),
  '@windlass/core/warmup': () => import('@windlass/core/warmup'),
};

/** Runs a snippet against the sources of the core and gives what it printed, line by line. */
export async function runSnippet(code: string): Promise<readonly (readonly unknown[])[]> {
  const modules = new Map<string, object>();
  for (const [name, load] of Object.entries(entries)) {
    if (code.includes(`'${name}'`)) modules.set(name, await load());
  }
  const { outputText } = ts.transpileModule(code, {
    compilerOptions: { module: ts.ModuleKind.CommonJS, target: ts.ScriptTarget.ES2023 },
  });
  const printed: (readonly unknown[])[] = [];
  const run = compileFunction(outputText, ['require', 'exports', 'console']);
  const require = (name: string) => {
    const module = modules.get(name);
    if (!module) throw new Error(`the snippet imports ${name}, which is no published entry here`);
    return module;
  };
  run(require, {}, { log: (...values: readonly unknown[]) => printed.push(values) });
  return printed;
}
