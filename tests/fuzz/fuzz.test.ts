import { describe, expect, it } from 'vitest';
import { type Failure, fuzz } from './fuzz.ts';
import { targets } from './targets/index.ts';
import { watchOver } from './watch.ts';

const {
  WINDLASS_FUZZ_COUNT = '20000',
  WINDLASS_FUZZ_SEED = '20270315',
  WINDLASS_FUZZ_ONLY = '',
} = process.env;
const count = Number(WINDLASS_FUZZ_COUNT);
const chosen = targets.filter(({ name }) => name.includes(WINDLASS_FUZZ_ONLY));

describe('whatever comes from outside', () => {
  it(`is answered, ${count} inputs`, { timeout: 24 * 3600 * 1000 }, async () => {
    const watch = watchOver(60);
    const started = performance.now();
    const failures = await fuzz(chosen, {
      count,
      seed: Number(WINDLASS_FUZZ_SEED),
      before: (target, seed) => watch.now(`${target.name}, --seed ${seed} --count 1`),
      after: (done) => {
        if (done % 100_000 === 0) console.log(`${done} inputs, ${seconds(started)}`);
      },
    });
    await watch.end();
    expect(failures.map(told).join('\n\n')).toBe('');
  });
});

function told({ target, fault, input, seed }: Failure): string {
  const only = WINDLASS_FUZZ_ONLY && ` --only "${WINDLASS_FUZZ_ONLY}"`;
  return `${target}: ${fault}\n  npm run fuzz -- --seed ${seed} --count 1${only}\n  ${input}`;
}

function seconds(since: number): string {
  return `${Math.round((performance.now() - since) / 1000)} s`;
}
