import {
  advanceLiveSet,
  type LiveSetEvent,
  liveSetRecord,
  startLiveSet,
} from '@windlass/core/extension';
import { readLogCsv } from '@windlass/core/progress';
import { expect, it } from 'vitest';
import { logRow } from './logRow.ts';

it('is a log that the library reads back: the lifting, and in the note what came after', () => {
  const plan = {
    exerciseId: 'chin-up',
    load: { value: 82.5, unit: 'kg' },
    stages: [{ kind: 'lift' }, { kind: 'hold', at: 'contracted', maxSeconds: 10 }],
    secondsPerRep: 6,
    maxSeconds: 120,
  } as const;
  const events: readonly LiveSetEvent[] = [
    { kind: 'started', atSeconds: 0 },
    { kind: 'rep', atSeconds: 6 },
    { kind: 'rep', atSeconds: 12 },
    { kind: 'failed', atSeconds: 14 },
    { kind: 'hold-begun', atSeconds: 14 },
    { kind: 'hold-ended', atSeconds: 20 },
  ];
  const set = events.reduce((so, event) => advanceLiveSet(so, event).set, startLiveSet(plan));
  const record = liveSetRecord(set, 20_000);
  if (record.kind === 'open' || !record.performed) throw new Error('no record');
  const running = { set, origin: 0, name: 'Chin-up', tempo: '4-0-2-0' };
  const read = readLogCsv(logRow(running, record.performed, '2026-03-02'));
  expect(read.sets).toEqual([
    {
      date: '2026-03-02',
      exercise: 'chin-up',
      set: 1,
      load: { value: 82.5, unit: 'kg' },
      counts: 'total',
      reps: 2,
      end: { kind: 'failure' },
      tempo: '4-0-2-0',
      note: 'Hold contracted, 10 s at most',
    },
  ]);
});
