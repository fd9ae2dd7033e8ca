import { type Gym, reachableLoads } from '../equipment/index.ts';
import { loadFromValue } from '../load/index.ts';
import { dateOfDay, dayNumber } from '../recovery/dayNumber.ts';
import { type PerformedSet, recentSetDays } from '../strength/index.ts';
import { secondsPerRep } from '../tempo/index.ts';
import type { Client, ClientSet } from './Client.ts';
import { type Lift, useOf } from './liftOf.ts';
import { loadBehindNumber } from './loadBehindNumber.ts';

/** The sets that tell about a lift, and those that were passed over with the reason. */
export interface LiftHistory {
  readonly sets: readonly PerformedSet[];
  /** Day of the latest of them. */
  readonly lastDate?: string;
  readonly passedOver: readonly { readonly set: ClientSet; readonly why: string }[];
}

/**
 * A client's sets of one lift, in loads that are moved, the last six weeks of them.
 *
 * `performedSets` of `@windlass/core/progress` reads whole logs with their rests and gives later
 * sets of a day the capacity they began with; a client's sets carry no rests, so here they are
 * passed over.
 *
 * Sets on other equipment are another lift's. Passed over are sets after the day of the session,
 * old ones where newer ones are known, and those after the first of a day, since how tired they
 * began is not known.
 */
export function liftHistory(lift: Lift, client: Client, gym: Gym, date: string): LiftHistory {
  const own = client.sets.filter(
    (set) => set.exercise === lift.exercise.id && set.equipment === lift.equipment.id,
  );
  const known = own.filter((set) => set.date <= date).map((set) => set.date);
  const lastDate = known.sort().at(-1);
  const seen = new Set<string>();
  const read = own.map((set) => {
    if (set.date > date) return passOver(set, 'dated after the session');
    if (dayNumber(lastDate ?? date) - dayNumber(set.date) > recentSetDays) {
      return passOver(set, 'more than six weeks older than the last one');
    }
    if (seen.has(set.date)) return passOver(set, 'not the first of its day, so begun tired');
    seen.add(set.date);
    return readSet(set, lift, gym);
  });
  const used = read.filter((one) => one.kind === 'set');
  return {
    sets: used.map((one) => one.set),
    ...(used.length > 0 && { lastDate: dateOfDay(Math.max(...used.map(({ set }) => set.day))) }),
    passedOver: read.filter((one) => one.kind === 'passed-over'),
  };
}

function passOver(set: ClientSet, why: string) {
  return { kind: 'passed-over', set, why } as const;
}

function readSet(logged: ClientSet, lift: Lift, gym: Gym) {
  const loads = logged.bodyWeight
    ? reachableLoads(lift.equipment, useOf(lift.exercise, gym, logged.bodyWeight))
    : lift.loads;
  if (loads.kind === 'none') return passOver(logged, 'done with a load that is not known');
  const load = loadBehindNumber(loads, loadFromValue(logged.load));
  if (load <= 0) return passOver(logged, 'done with as much help as load');
  const set: PerformedSet = {
    load,
    reps: logged.reps,
    end: logged.end,
    day: dayNumber(logged.date),
    ...(logged.tempo && { secondsPerRep: secondsPerRep(logged.tempo) }),
  };
  return { kind: 'set', set } as const;
}
