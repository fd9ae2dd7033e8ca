import { Stryker } from '@stryker-mutator/core';
import { setMutatedFolder } from './mutatedFolder.ts';

/** A small change to the code, and what the tests said to it. */
export type Mutant = Awaited<ReturnType<Stryker['runMutationTest']>>[number];

/** Tries every mutant of one folder of core that is new since the last time. */
export async function tryMutants(folder: string): Promise<readonly Mutant[]> {
  setMutatedFolder(folder);
  const source = `packages/core/src/${folder}`;
  const stryker = new Stryker({
    plugins: ['@stryker-mutator/vitest-runner', './tests/mutation/sentences.ts'],
    ignorers: ['sentences'],
    testRunner: 'vitest',
    // The configuration names the tests; to look anew for those that reach a file costs more than they do.
    vitest: { configFile: 'tests/mutation/vitest.config.ts', related: false },
    mutate: [`${source}/**/*.ts`, `!${source}/**/*.{test,testing}.ts`, `!${source}/**/oracle/*.ts`],
    // What runs while a module loads is data: tables, constants, lists of sources.
    ignoreStatic: true,
    coverageAnalysis: 'perTest',
    concurrency: 1,
    // Long enough for a busy machine; a mutant that hangs is found by counting its steps.
    timeoutMS: 20_000,
    incremental: true,
    incrementalFile: `.cache/mutation/${folder}.json`,
    tempDirName: `.cache/mutation/tmp-${folder}`,
    ignorePatterns: ['site', 'examples', 'packages/calculators', '.cache', '**/dist'],
    reporters: ['progress-append-only'],
    allowEmpty: true,
  });
  return stryker.runMutationTest();
}
