// npm run fuzz -- --count 1000000 --seed 7 --only calculator: tries what comes from outside with seeded inputs.
import { parseArgs } from 'node:util';
import { CommandError, ensureInstalled, main, runBin } from './workspace.mjs';

await main(async () => {
  const { values } = parseArgs({
    options: {
      count: { type: 'string', default: '1000000' },
      seed: { type: 'string', default: String(Date.now() % 2 ** 31) },
      only: { type: 'string', default: '' },
    },
  });
  for (const name of ['count', 'seed']) {
    if (!Number.isSafeInteger(Number(values[name])))
      throw new CommandError(`--${name} must be a whole number, got ${values[name]}.`);
  }
  await ensureInstalled();
  console.log(`${values.count} inputs from seed ${values.seed}`);
  const { status } = await runBin('vitest', ['run', 'tests/fuzz', '--disableConsoleIntercept'], {
    env: {
      WINDLASS_FUZZ_COUNT: values.count,
      WINDLASS_FUZZ_SEED: values.seed,
      WINDLASS_FUZZ_ONLY: values.only,
    },
  });
  process.exitCode = typeof status === 'number' ? status : 1;
});
