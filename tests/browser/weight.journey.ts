import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { calculators } from '@windlass/calculators';
import { describe, expect, it } from 'vitest';
import { bytesOnTheWay, fileNamed, firstScripts } from './firstScripts.ts';

const assets = join(dirname(dirname(dirname(fileURLToPath(import.meta.url)))), 'site/dist/assets');

/** What a tool may send before it answers: its frame, what runs it, and the tool itself. */
const MOST_BYTES = 45_000;
/**
 * More than that: the log review reads tables, learns from them and plans before its first number;
 * an exchange knows all exercises, and a chain its rules: both are a little over since the frame keeps
 * what a page arrived with and says what is wrong in a row within that row.
 */
const MOST_BYTES_OF: Readonly<Record<string, number>> = {
  'log-review': 64_000,
  exchange: 45_500,
  'past-failure': 45_500,
};

describe('the page of a tool', () => {
  const frame = firstScripts(fileNamed(assets, 'Calculator.'));

  it.each(calculators.map(({ id }) => id))('%s answers after few scripts', (id) => {
    const own = firstScripts(fileNamed(assets, `${id}.`));
    const bytes = bytesOnTheWay(new Set([...frame, ...own]));
    console.log(`${id}: ${(bytes / 1000).toFixed(1)} kB`);
    expect(bytes).toBeLessThanOrEqual(MOST_BYTES_OF[id] ?? MOST_BYTES);
  });
});
