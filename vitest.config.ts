import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const packages = fileURLToPath(new URL('packages', import.meta.url));

/** Tests run on the sources of the packages, so they need no build. */
const alias = [
  { find: /^@windlass\/(core|calculators)$/, replacement: `${packages}/$1/src/index.ts` },
  {
    find: /^@windlass\/calculators\/(ui|live)$/,
    replacement: `${packages}/calculators/src/$1/index.ts`,
  },
  { find: /^@windlass\/core\/([a-z]+)$/, replacement: `${packages}/core/src/$1/index.ts` },
];

export default defineConfig({
  resolve: { alias },
  test: {
    // Property tests and solvers take longer on a busy machine than any single assertion may.
    testTimeout: 60_000,
    setupFiles: ['tests/setup/seedProperties.ts'],
    include: [
      '{packages/*,site}/src/**/*.test.{ts,tsx}',
      'packages/*/{build,languages}/*.test.ts',
      'tests/**/*.test.ts',
    ],
  },
});
