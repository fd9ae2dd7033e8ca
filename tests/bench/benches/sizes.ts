import type { Plugin } from 'esbuild';
import type { Bench, Size } from '../Benchmark.ts';
import { bundledBytes } from '../bundled.ts';

/** Each entry, and a function that one would import from it alone. */
const typical = {
  anatomy: 'findExercise',
  basis: 'requireNumber',
  capacity: 'sustainedSeconds',
  equipment: 'reachableLoads',
  exchange: 'exchangeFor',
  extension: 'forecastChain',
  load: 'addLoads',
  pairing: 'planPair',
  progress: 'nextLoad',
  recovery: 'hoursUntilReady',
  safety: 'cautionsFor',
  schema: 'readGym',
  session: 'planSession',
  strength: 'repsAtShare',
  tempo: 'secondsPerSet',
  warmup: 'planRamp',
} as const;
const LIMITS = { whole: 20_000, one: 1500 };

/** What an application pays for what it imports. */
export const sizes: Bench = {
  id: 'sizes',
  title: 'Sizes after gzip, bundled and minified by esbuild',
  run: async () => {
    const measured: Size[] = [];
    const rows: string[] = [];
    for (const [entry, name] of Object.entries(typical)) {
      const whole = await bundledBytes(`export * from '@windlass/core/${entry}'`);
      const one = await bundledBytes(`export { ${name} } from '@windlass/core/${entry}'`);
      measured.push(
        { id: `sizes/${entry}`, bytes: whole },
        { id: `sizes/${entry}/${name}`, bytes: one },
      );
      rows.push(`${entry.padEnd(10)} ${kB(whole)}   ${name} ${kB(one).trim()}`);
    }
    const all = await bundledBytes(`export * from '@windlass/core'`);
    const bare = await bundledBytes(`export * from '@windlass/core'`, [withoutExercises]);
    measured.push(
      { id: 'sizes/core', bytes: all },
      { id: 'sizes/core-without-exercises', bytes: bare },
    );
    const functions = await everyFunction();
    const small = functions.filter(({ bytes }) => bytes <= LIMITS.one);
    const largest = functions.toSorted((a, b) => b.bytes - a.bytes).slice(0, 5);
    return {
      lines: [
        ...rows,
        `all of core ${kB(all).trim()}; without the data of the exercises ${kB(bare).trim()}, wanted at most ${kB(LIMITS.whole).trim()}: ${bare <= LIMITS.whole ? 'met' : 'not met'}`,
        `one function: ${small.length} of ${functions.length} are at most ${kB(LIMITS.one).trim()}, half of them at most ${kB(median(functions.map(({ bytes }) => bytes))).trim()}`,
        `  the largest, which plan whole things: ${largest.map(({ name, bytes }) => `${name} ${kB(bytes).trim()}`).join(', ')}`,
      ],
      sizes: measured,
    };
  },
};

/** The exercises are data that an application may bring itself; everything else stays. */
const withoutExercises: Plugin = {
  name: 'without-exercises',
  setup(build) {
    build.onResolve({ filter: /^@windlass\/core$/ }, () => ({ path: source }));
    build.onLoad({ filter: /anatomy\/exercises(\/\w+)?\.ts$/ }, ({ path }) =>
      path.endsWith('anatomy/exercises.ts') ? { contents: 'export const exercises = [];' } : null,
    );
  },
};
const source = new URL('../../../packages/core/src/index.ts', import.meta.url).pathname;

async function everyFunction(): Promise<readonly { name: string; bytes: number }[]> {
  const found: { name: string; bytes: number }[] = [];
  for (const entry of Object.keys(typical)) {
    const exported: Record<string, unknown> = await import(`@windlass/core/${entry}`);
    for (const [name, value] of Object.entries(exported)) {
      if (typeof value !== 'function') continue;
      const bytes = await bundledBytes(`export { ${name} } from '@windlass/core/${entry}'`);
      found.push({ name, bytes });
    }
  }
  return found;
}

const kB = (bytes: number) => `${(bytes / 1000).toFixed(2).padStart(6)} kB`;

function median(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;
}
