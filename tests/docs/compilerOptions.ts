import { join } from 'node:path';
import ts from 'typescript';
import { root } from './workspaceFiles.ts';

const packages = join(root, 'packages');

/** The project's own compiler settings, with every published entry resolved to its source. */
export const compilerOptions: ts.CompilerOptions = {
  ...baseOptions(),
  lib: ['lib.es2023.d.ts', 'lib.dom.d.ts', 'lib.dom.iterable.d.ts'],
  moduleDetection: ts.ModuleDetectionKind.Force,
  noUnusedLocals: false,
  jsx: ts.JsxEmit.ReactJSX,
  jsxImportSource: 'preact',
  types: ['node'],
  paths: {
    '@windlass/core': [join(packages, 'core/src/index.ts')],
    '@windlass/core/*': [join(packages, 'core/src/*/index.ts')],
    '@windlass/calculators': [join(packages, 'calculators/src/index.ts')],
    '@windlass/calculators/*': [join(packages, 'calculators/src/*/index.ts')],
  },
};

function baseOptions(): ts.CompilerOptions {
  const file = join(root, 'tsconfig.base.json');
  const read = ts.readConfigFile(file, ts.sys.readFile);
  return ts.parseJsonConfigFileContent(read.config, { ...ts.sys, readDirectory: () => [] }, root)
    .options;
}
