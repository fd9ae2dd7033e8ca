import type { Plugin } from 'vitest/config';

/** Every mutant runs the tests again; a law that needs more cases than these to see one is too weak. */
export const LAW_CASES = 25;

/** Laws that ask for a number of cases of their own get no more either. */
export const lawCases: Plugin = {
  name: 'law-cases',
  enforce: 'pre',
  transform: (code, id) =>
    id.endsWith('.test.ts')
      ? code.replaceAll(/numRuns: [\d_]+/g, `numRuns: ${LAW_CASES}`)
      : undefined,
};
