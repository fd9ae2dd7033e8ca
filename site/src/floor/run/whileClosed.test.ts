import { describe, expect, it } from 'vitest';
import type { FloorEvent } from './FloorEvent.ts';
import { foldEvents } from './foldEvents.ts';
import { whileClosed } from './whileClosed.ts';

const session = {
  steps: [{ lift: 0, kind: 'work', number: 1, of: 1, load: null, reps: 8, restSeconds: 60 }],
} as const;
const counting: readonly FloorEvent[] = [
  { kind: 'begun', leadInSeconds: 5, counted: true, at: 0 },
  { kind: 'rep', by: 'count', at: 11_000 },
  { kind: 'rep', by: 'count', at: 17_000 },
];

describe('a page that was closed in the middle of a set', () => {
  it('goes on counting with the lifter after a reload', () => {
    expect(whileClosed(session, counting, 40_000)).toBeNull();
  });

  it('stands at the last repetition after a longer while', () => {
    const closed = whileClosed(session, counting, 900_000);
    expect(closed?.event).toEqual({ kind: 'held', at: 17_000 });
    const state = foldEvents(session, [...counting, ...(closed ? [closed.event] : [])]);
    expect(state).toMatchObject({ phase: 'lifting', running: { reps: 2, count: null } });
  });

  it('is left alone where nothing was counted', () => {
    expect(whileClosed(session, [], 900_000)).toBeNull();
    expect(whileClosed(session, [...counting, { kind: 'failed', at: 20_000 }], 900_000)).toBeNull();
  });
});
