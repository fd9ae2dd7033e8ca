import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    root: import.meta.dirname,
    include: ['**/*.journey.ts'],
    fileParallelism: false,
    testTimeout: 60_000,
    hookTimeout: 60_000,
    // A page under two busy cores may take seconds to show what a press has already done.
    expect: { poll: { timeout: 15_000 } },
  },
});
