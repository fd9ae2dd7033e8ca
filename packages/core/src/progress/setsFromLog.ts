import type { LoadValue } from '../load/index.ts';
import { dayNumber } from '../recovery/index.ts';
import { recentSetDays, type SetEnd } from '../strength/index.ts';
import { parseTempo, type Tempo } from '../tempo/index.ts';
import { setAsideTags } from './LiftSession.ts';
import type { LoggedSet } from './LoggedSet.ts';

/** A set as a plan knows it of a person. */
export interface KnownSet {
  /** The day it was done, `YYYY-MM-DD`. */
  readonly date: string;
  /** Id of the exercise. */
  readonly exercise: string;
  /** Id of the equipment in the gym: numbers of two machines never compare. */
  readonly equipment: string;
  /** The number that is read off or counted up there: total of a bar, one hand, stack, plates, added weight. */
  readonly load: LoadValue;
  readonly reps: number;
  readonly end: SetEnd;
  /** Left out when nobody knows. */
  readonly tempo?: Tempo;
  /** Needed where the person is the load. */
  readonly bodyWeight?: LoadValue;
}

/**
 * The sets of a log that tell a plan how strong somebody is: what a client's `sets` hold.
 *
 * Of each lift, which is an exercise on a piece of equipment, these are the first sets of its days
 * in the last six weeks that it was done in; later sets of a day are begun tired. Where the sides
 * were counted apart it is the weaker one. Left out are names that are no ids, sets without
 * equipment, since numbers of two machines never compare, and sets tagged `travel`, `light` or
 * `test`. A set whose end was not noted counts as a floor: so many were possible, perhaps more. Of one and a half repetitions left one counts.
 *
 * @param log in any order.
 * @returns oldest first; empty for an empty log.
 * @example
 * ```ts
 * import { setsFromLog } from '@windlass/core/progress';
 * const load = { value: 52.5, unit: 'kg' } as const;
 * const set = { exercise: 'cable-pulldown', equipment: 'pulldown', load, counts: 'stack' } as const;
 * const sets = setsFromLog([
 *   { ...set, date: '2027-03-08', set: 1, reps: 10, end: { kind: 'failure' } },
 *   { ...set, date: '2027-03-08', set: 2, reps: 7, end: { kind: 'failure' } },
 *   { ...set, date: '2027-03-11', set: 1, reps: 11 },
 * ]);
 * sets.map(({ date, reps }) => `${date}: ${reps}`); // ['2027-03-08: 10', '2027-03-11: 11']
 * ```
 */
export function setsFromLog(log: readonly LoggedSet[]): readonly KnownSet[] {
  const usable = log.flatMap((set) => {
    const { exercise, equipment, tags } = set;
    const isAside = tags?.some((tag) => setAsideTags.includes(tag));
    if (equipment === undefined || isAside || !isId(exercise) || !isId(equipment)) return [];
    return [{ ...set, equipment }];
  });
  const lastDays = new Map<string, number>();
  const firsts = new Map<string, Usable>();
  for (const set of usable) {
    const day = dayNumber(set.date);
    lastDays.set(liftOf(set), Math.max(day, lastDays.get(liftOf(set)) ?? day));
    const key = `${liftOf(set)} ${set.date}`;
    firsts.set(key, firstOf(set, firsts.get(key) ?? set));
  }
  return [...firsts.values()]
    .filter((set) => (lastDays.get(liftOf(set)) ?? 0) - dayNumber(set.date) <= recentSetDays)
    .map(knownSet)
    .sort((a, b) => dayNumber(a.date) - dayNumber(b.date));
}

type Usable = LoggedSet & { readonly equipment: string };

/** Which lift a set is of. */
function liftOf({ exercise, equipment }: Usable): string {
  return `${exercise} ${equipment}`;
}

/** The earlier of two sets of a day, or the weaker side of one set. */
function firstOf(a: Usable, b: Usable): Usable {
  return (a.set - b.set || a.reps - b.reps) < 0 ? a : b;
}

function knownSet(set: Usable): KnownSet {
  const { date, exercise, equipment, load, reps, end, tempo, bodyWeight } = set;
  const read = tempo === undefined ? undefined : parseTempo(tempo);
  return {
    date,
    exercise,
    equipment,
    load,
    reps,
    end: wholeEnd(end),
    ...(read?.ok && { tempo: read.value.tempo }),
    ...(bodyWeight && { bodyWeight }),
  };
}

/** Half a repetition left, as an effort of 8.5 says, is counted down: that is the careful side. */
function wholeEnd(end: SetEnd = { kind: 'more', atLeast: 0 }): SetEnd {
  if (end.kind === 'reserve') return { kind: 'reserve', repsLeft: Math.floor(end.repsLeft) };
  return end.kind === 'more' ? { kind: 'more', atLeast: Math.floor(end.atLeast) } : end;
}

function isId(text: string): boolean {
  return /^[a-z0-9][a-z0-9-]{0,63}$/.test(text);
}
