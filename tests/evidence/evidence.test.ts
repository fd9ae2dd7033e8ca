import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { committedReport, committedShares, sharesOf } from './committed.ts';
import { comparisons } from './comparisons.ts';
import { copiedFigures } from './copiedFigures.ts';
import { evidenceReport } from './evidenceReport.ts';
import { notCompared } from './notCompared.ts';

const kept = committedReport();
const { coverage, windows, logs } = kept.calibration;
const report = evidenceReport({ coverage, windows: windows.hits, logs: logs.kinds });

/** What to do when the figures have moved. */
const help = 'run npm run evidence -- --accept and say in the commit why a share is worse';

describe('the evidence report', () => {
  it('has the shares that are kept', () => {
    expect(sharesOf(report), help).toEqual(committedShares());
  });

  it('is the one that the site shows', () => {
    expect(report, help).toEqual(kept);
  });

  it('explains every counted miss, and nothing that is met', () => {
    const rows = report.comparisons.flatMap((one) => one.rows);
    const silent = rows.filter(({ inside, aside, miss }) => !inside && aside === null && !miss);
    expect(silent).toEqual([]);
    expect(rows.filter(({ inside, miss }) => inside && miss !== null)).toEqual([]);
  });

  it('names each row once in its comparison', () => {
    for (const { rows } of report.comparisons) {
      const labels = rows.map(({ label }) => label);
      expect(labels.filter((label, index) => labels.indexOf(label) !== index)).toEqual([]);
    }
  });

  it('leaves no copied data set out, and none both compared and not compared', () => {
    const compared = new Set([
      ...comparisons.flatMap(({ tables }) => tables),
      ...copiedFigures().map(({ table }) => table),
    ]);
    const without = new Set(notCompared.map(({ table }) => table));
    expect([...without].filter((table) => compared.has(table))).toEqual([]);
    const files = readdirSync(new URL('../reference', import.meta.url));
    const copied = files.map((file) => file.replace('.json', ''));
    expect(copied.filter((table) => !compared.has(table) && !without.has(table))).toEqual([]);
  });
});

describe('what the library repeats from a publication', () => {
  for (const { table, pairs, within } of copiedFigures()) {
    it(`agrees to the printed digit: ${table}`, () => {
      for (const [ours, theirs] of pairs) {
        expect(Math.abs(ours - theirs)).toBeLessThanOrEqual(within);
      }
    });
  }
});
