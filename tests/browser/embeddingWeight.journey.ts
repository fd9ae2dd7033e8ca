import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { calculators } from '@windlass/calculators';
import { describe, expect, it } from 'vitest';
import { bytesOnTheWay, firstScripts } from './firstScripts.ts';

const packages = join(dirname(dirname(dirname(fileURLToPath(import.meta.url)))), 'packages');
const folder = join(packages, 'calculators/dist/standalone');
const frame = join(folder, 'windlass.js');

/** The first calculator of a page, with the part that all share, its styles and its texts. */
const MOST_BYTES = 45_000;
/**
 * Those that compute more before their first number: the tables of exercises and complaints, the
 * whole chain past failure with its screening, and reading a log with all that is learnt from it.
 * First load is 0.6 kB over, the ramp 0.1: both ask for the equipment in rows, and the first learns
 * from tries.
 */
const MOST_BYTES_OF: Readonly<Record<string, number>> = {
  'first-load': 46_000,
  'warm-up-ramp': 45_500,
  exchange: 52_000,
  'past-failure': 52_000,
  'log-review': 71_500,
};

/** The file that the element fetches for a calculator. */
function fileOf(id: string): string {
  const asked = new RegExp(`import\\("\\./(${id}-[A-Z0-9]{8}\\.js)"\\)`);
  const [, name] = asked.exec(readFileSync(frame, 'utf8')) ?? [];
  if (!name) throw new Error(`the element fetches no ${id}`);
  return join(folder, name);
}

describe('the standalone element', () => {
  const shared = firstScripts(frame);

  it.each(calculators.map(({ id }) => id))('%s answers after few scripts', (id) => {
    const whole = new Set([...shared, ...firstScripts(fileOf(id))]);
    const bytes = bytesOnTheWay(whole);
    console.log(`${id}: ${(bytes / 1000).toFixed(1)} kB`);
    expect(bytes).toBeLessThanOrEqual(MOST_BYTES_OF[id] ?? MOST_BYTES);
  });
});
