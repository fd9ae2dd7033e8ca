import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { floors } from '../../house/floors.ts';
import type { Bench } from '../Benchmark.ts';

const here = fileURLToPath(new URL('..', import.meta.url));

/** How long a fresh Node takes to load an entry: shown, and not held against a baseline. */
export const imports: Bench = {
  id: 'imports',
  title: 'Loading an entry in a fresh Node',
  run: async ({ quick }) => {
    const rounds = quick ? 3 : 7;
    const rows = floors.map((entry) => {
      const times = Array.from({ length: rounds }, () => milliseconds(`@windlass/core/${entry}`));
      return `${entry} ${Math.min(...times).toFixed(1)} ms`;
    });
    return { lines: [`fastest of ${rounds}: ${rows.join(', ')}`] };
  },
};

function milliseconds(specifier: string): number {
  const code = `const start = performance.now(); await import('${specifier}'); console.log(performance.now() - start);`;
  const { stdout } = spawnSync(process.execPath, ['--input-type=module', '-e', code], {
    cwd: here,
    encoding: 'utf8',
  });
  return Number(stdout);
}
