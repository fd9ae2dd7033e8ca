import {
  muscleHours,
  type RotaSession,
  type TrainedSets,
  type TrainingStatus,
} from '@windlass/core/recovery';
import { sessionKinds } from '../precomputed/sessionKinds.ts';
import type { CalendarInput, SessionRow } from './fields.ts';
import { said } from './words.ts';

/** How the sets of a light session end, and how long it takes against the ordinary one. */
export const LIGHT = { repsInReserve: 3, minutesShare: 2 / 3 } as const;

const ENDS: Readonly<
  Record<SessionRow['end'], Pick<TrainedSets, 'repsInReserve' | 'stagesPastFailure'>>
> = {
  '3': { repsInReserve: 3 },
  '2': { repsInReserve: 2 },
  '1': { repsInReserve: 1 },
  '0': { repsInReserve: 0 },
  past: { repsInReserve: 0, stagesPastFailure: 2 },
};

/** How the sets of a row are done. */
export function mannerOf({ sets, end }: SessionRow): Omit<TrainedSets, 'exercise'> {
  return { sets, ...ENDS[end] };
}

/** The same on a light day. */
export function lightMannerOf({ sets }: SessionRow): Omit<TrainedSets, 'exercise'> {
  return { sets: Math.ceil(sets / 2), repsInReserve: LIGHT.repsInReserve };
}

export function lightMinutes({ minutes }: SessionRow): number {
  return Math.max(10, Math.round(minutes * LIGHT.minutesShare));
}

/** Work that is new without a history is new to beginners in their first weeks alone. */
export function hoursOptions({ status, by }: Pick<CalendarInput, 'status' | 'by'>) {
  return { status, by } satisfies { status: TrainingStatus; by: CalendarInput['by'] };
}

/** The rows as sessions of a rotation, with the hours that each muscle asks for. */
export function sessionsOf(input: CalendarInput): readonly RotaSession[] {
  const hours = (row: SessionRow, manner: Omit<TrainedSets, 'exercise'>) =>
    muscleHours(
      (sessionKinds[row.trains] ?? []).map((exercise) => ({ exercise, ...manner })),
      hoursOptions(input),
    );
  return input.sessions.map((row, place) => ({
    id: String(place + 1),
    name: nameOf(input.sessions, place),
    minutes: row.minutes,
    muscles: hours(row, mannerOf(row)),
    light: { minutes: lightMinutes(row), muscles: hours(row, lightMannerOf(row)) },
    ...(row.place === 'own' && { gyms: [OWN_GYM] }),
  }));
}

/** Where sessions are that are not away. */
export const OWN_GYM = said.ownGym;

/** What a session trains; its number with it where another trains the same. */
function nameOf(rows: readonly SessionRow[], place: number): string {
  const trains = rows[place]?.trains ?? 'whole';
  const name = said.kinds[trains];
  const isOne = rows.filter((row) => row.trains === trains).length === 1;
  return isOne ? name : `${name} ${place + 1}`;
}
