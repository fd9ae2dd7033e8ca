import { type LoggedSet, writeLogCsv } from '@windlass/core/progress';
import { dateOfDay, dayNumber } from '@windlass/core/recovery';

/** The first Tuesday of the log; the crew trains on Tuesdays and Fridays. */
const FIRST = dayNumber('2026-01-06');

const kg = (value: number) => ({ value, unit: 'kg' }) as const;

/** Repetitions of both rows, session by session, and the stack number. */
const ROWS = [
  [45, 9, 8],
  [45, 10, 8],
  [45, 10, 10],
  [45, 10, 10],
  [47.5, 8, 7],
  [47.5, 9, 8],
  [47.5, 9, 8],
  [47.5, 10, 9],
  [35, 8, 8],
  [47.5, 10, 10],
  [47.5, 10, 10],
  [50, 8, 8],
  [50, 9, 8],
  [50, 10, 9],
  [50, 10, 10],
  [50, 10, 10],
] as const;

/** Split squats: the weight in each hand, and repetitions of the left and the right leg. */
const SQUATS = [
  [14, 8, 10],
  [14, 9, 10],
  [14, 10, 11],
  [16, 8, 9],
  [16, 8, 10],
  [16, 9, 10],
  [16, 10, 10],
  [18, 8, 9],
  [12, 8, 8],
  [18, 8, 9],
  [20, 7, 8],
  [20, 7, 7],
  [20, 6, 7],
  [20, 7, 7],
  [20, 6, 7],
  [20, 6, 6],
] as const;

/** Chin-ups: repetitions, and what hung on the belt. */
const CHINS = [7, 7, 8, 8, 9, 9, 10, 10, 6, 7, 7, 8, 8, 9, 9, 10].map(
  (reps, session) => [session < 8 ? 0 : session === 8 ? 0 : 2.5, reps] as const,
);

const sets = ROWS.flatMap(([stack, first, second], session): LoggedSet[] => {
  const date = dateOfDay(FIRST + 7 * Math.floor(session / 2) + (session % 2 === 0 ? 0 : 3));
  const isLight = session === 8;
  const tags = isLight ? { tags: ['light'] } : {};
  const end = isLight
    ? ({ kind: 'reserve', repsLeft: 3 } as const)
    : ({ kind: 'failure' } as const);
  const row = { date, exercise: 'cable-row', load: kg(stack), counts: 'stack', end } as const;
  const [dumbbell, left, right] = SQUATS[session] ?? [14, 8, 8];
  const squat = {
    date,
    exercise: 'dumbbell-split-squat',
    set: 1,
    load: kg(dumbbell),
    counts: 'each-hand',
    end,
  } as const;
  const [belt, reps] = CHINS[session] ?? [0, 7];
  return [
    { ...row, set: 1, reps: first, tempo: '3-0-2-0', ...tags },
    { ...row, set: 2, reps: second, tempo: '3-0-2-0', restSeconds: 150, ...tags },
    { ...squat, side: 'left', reps: left, ...tags },
    { ...squat, side: 'right', reps: right, ...tags },
    {
      date,
      exercise: 'chin-up',
      set: 1,
      load: kg(belt),
      counts: 'added',
      bodyWeight: kg(78),
      reps,
      end,
      ...tags,
    },
  ];
});

/** Eight weeks of one of the crew, in the columns of this library; lines end as a text field ends them. */
export const boathouseLog = writeLogCsv(sets).replaceAll('\r\n', '\n').trim();
