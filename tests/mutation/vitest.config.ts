import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import base from '../../vitest.config.ts';
import { lawCases } from './lawCases.ts';
import { mutatedFolder } from './mutatedFolder.ts';
import { QuickFirst } from './quickFirst.ts';

/** A folder answers for itself: only its own tests count, not those of the floors that use it. */
export default defineConfig({
  ...base,
  plugins: [lawCases],
  root: fileURLToPath(new URL('../..', import.meta.url)),
  test: {
    ...base.test,
    include: [`packages/core/src/${mutatedFolder()}/**/*.test.ts`],
    // How long code takes says nothing while every line asks which mutant is on; a general solver is slow.
    // Laws over whole sessions plan dozens of them for every mutant; each part of a session has tests
    // of its own.
    exclude: [
      '**/*{Speed,Mip}.test.ts',
      '**/session/{planSession,rememberLifts,wishes}.prop.test.ts',
    ],
    setupFiles: ['tests/setup/seedProperties.ts', 'tests/mutation/fewerCases.ts'],
    // Mutants are switched on while the code runs, so its modules need not be loaded anew.
    isolate: false,
    sequence: { sequencer: QuickFirst },
  },
});
