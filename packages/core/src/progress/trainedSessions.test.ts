import { describe, expect, it } from 'vitest';
import { exercises } from '../anatomy/index.ts';
import type { LoggedSet } from './LoggedSet.ts';
import { trainedSessions } from './trainedSessions.ts';

const set = (date: string, exercise: string, more: Partial<LoggedSet> = {}): LoggedSet => ({
  date,
  exercise,
  set: 1,
  load: { value: 40, unit: 'kg' },
  counts: 'total',
  reps: 8,
  ...more,
});

describe('trainedSessions', () => {
  it('does not call work new before the log can know', () => {
    const { sessions } = trainedSessions([set('2026-01-05', 'cable-row')], exercises);
    expect(sessions[0]?.work[0]?.likeSessionsDaysAgo).toBeUndefined();
  });

  it('counts like work by movement, and finds what is new', () => {
    const { sessions } = trainedSessions(
      [
        set('2026-01-05', 'cable-row'),
        set('2026-03-16', 'one-arm-dumbbell-row'),
        set('2026-03-16', 'romanian-deadlift'),
      ],
      exercises,
    );
    const [row, hinge] = sessions[1]?.work ?? [];
    // from 5 January to 16 March 2026: 26 + 28 + 16 days
    expect(row?.likeSessionsDaysAgo).toEqual([70]);
    expect(hinge?.likeSessionsDaysAgo).toEqual([]);
  });

  it('takes both sides as one set, by the side nearer to failure', () => {
    const sides = [
      set('2026-01-05', 'one-arm-dumbbell-row', {
        side: 'left',
        end: { kind: 'reserve', repsLeft: 1 },
      }),
      set('2026-01-05', 'one-arm-dumbbell-row', {
        side: 'right',
        end: { kind: 'reserve', repsLeft: 3 },
      }),
    ];
    const { sessions } = trainedSessions(sides, exercises);
    expect(sessions[0]?.work.map(({ repsInReserve }) => repsInReserve)).toEqual([1]);
  });

  it('names what it does not know', () => {
    expect(trainedSessions([set('2026-01-05', 'ropes')], exercises)).toEqual({
      sessions: [],
      unknown: ['ropes'],
    });
  });
});
