// npm run bench: the library beside independent ways to the same answers. See DEVELOPERS.md.
import { readFileSync, writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import type { Bench, Ratio, Size } from './Benchmark.ts';
import { calendar } from './benches/calendar.ts';
import { chains } from './benches/chains.ts';
import { imports } from './benches/imports.ts';
import { loads } from './benches/loads.ts';
import { plans } from './benches/plans.ts';
import { posterior } from './benches/posterior.ts';
import { ramps } from './benches/ramps.ts';
import { sizes } from './benches/sizes.ts';
import { check } from './check.ts';
import { type Baseline, worse } from './judge.ts';

const { values: options } = parseArgs({
  options: {
    quick: { type: 'boolean', default: false },
    check: { type: 'boolean', default: false },
    accept: { type: 'boolean', default: false },
    only: { type: 'string' },
  },
});
const all: readonly Bench[] = [ramps, loads, chains, posterior, calendar, plans, sizes, imports];
const file = new URL('baseline.json', import.meta.url);

if (options.check) {
  if (!(await check(console.log))) process.exitCode = 1;
} else {
  const baseline: Baseline = JSON.parse(readFileSync(file, 'utf8'));
  const ratios: Ratio[] = [];
  const bytes: Size[] = [];
  for (const bench of all.filter(({ id }) => options.only === undefined || id === options.only)) {
    const start = performance.now();
    const measured = await bench.run({ quick: options.quick });
    const seconds = ((performance.now() - start) / 1000).toFixed(1);
    console.log(
      `\n${bench.title} (${seconds} s)\n${measured.lines.map((line) => `  ${line}`).join('\n')}`,
    );
    ratios.push(...(measured.ratios ?? []));
    bytes.push(...(measured.sizes ?? []));
  }
  if (options.accept) {
    const round = (value: number) => Number(value.toPrecision(3));
    const merged: Baseline = {
      ratios: {
        ...baseline.ratios,
        ...Object.fromEntries(ratios.map(({ id, value }) => [id, round(value)])),
      },
      sizes: {
        ...baseline.sizes,
        ...Object.fromEntries(bytes.map(({ id, bytes }) => [id, bytes])),
      },
    };
    writeFileSync(file, `${JSON.stringify(merged, null, 2)}\n`);
  } else {
    const lost = worse(baseline, ratios, bytes);
    console.log(
      lost.length === 0
        ? '\nNothing is worse than the baseline.'
        : `\nWorse than it may be:\n  ${lost.join('\n  ')}`,
    );
    if (lost.length > 0) process.exitCode = 1;
  }
}
