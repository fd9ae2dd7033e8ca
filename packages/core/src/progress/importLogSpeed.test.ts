import { describe, expect, it } from 'vitest';
import { importLog } from './importLog.ts';

describe('importLog', () => {
  it('reads all good rows of 10,000 and lists all of the one in a hundred that are broken', () => {
    const rows = Array.from({ length: 10_000 }, (_, i) => {
      const date = new Date(Date.UTC(2020, 0, 1 + Math.floor(i / 5))).toISOString().slice(0, 10);
      const row = `${date};Rudern;${40 + (i % 60)},5 kg;${5 + (i % 6)}`;
      if (i % 100 !== 50) return row;
      return [row.replace(' kg', ' Steine'), row.replace('Rudern', '"Rudern'), `${row};x`][i % 3];
    });
    const before = performance.now();
    const result = importLog(['Datum;Uebung;Last;Wdh', ...rows].join('\n'), {
      columns: { date: 'Datum', exercise: 'Uebung', load: 'Last', reps: 'Wdh' },
      unit: 'kg',
    });
    // a second is what a person still takes for at once; it takes about a tenth
    expect(performance.now() - before).toBeLessThan(1000);
    expect(result.sets).toHaveLength(9_900);
    expect(result.unread.map(({ line }) => line)).toEqual(
      Array.from({ length: 100 }, (_, i) => 100 * i + 52),
    );
  });
});
