import { type Gym, reachableLoads } from '../equipment/index.ts';
import { loadFromValue } from '../load/index.ts';
import type { PerformedSet } from '../strength/index.ts';
import { secondsPerRep } from '../tempo/index.ts';
import type { Client, ClientSet } from './Client.ts';
import { dayNumber } from './dayNumber.ts';
import { type Lift, useOf } from './liftOf.ts';
import { movedLoad } from './movedLoad.ts';

/** The sets that tell about a lift, and those that were passed over with the reason. */
export interface LiftHistory {
  readonly sets: readonly PerformedSet[];
  /** Day of the latest of them. */
  readonly lastDate?: string;
  readonly passedOver: readonly { readonly set: ClientSet; readonly why: string }[];
}

/**
 * A client's sets of one lift, in loads that are moved. Sets on other equipment are another
 * lift's; sets after the day of the session, and sets that moved nothing, are passed over.
 */
export function performedSets(lift: Lift, client: Client, gym: Gym, date: string): LiftHistory {
  const own = client.sets.filter(
    (set) => set.exercise === lift.exercise.id && set.equipment === lift.equipment.id,
  );
  const read = own.map((set) => readSet(set, lift, gym, date));
  const used = read.filter((one) => one.kind === 'set');
  const lastDate = used
    .map((one) => one.date)
    .sort()
    .at(-1);
  return {
    sets: used.map((one) => one.set),
    ...(lastDate !== undefined && { lastDate }),
    passedOver: read.filter((one) => one.kind === 'passed-over'),
  };
}

function readSet(logged: ClientSet, lift: Lift, gym: Gym, date: string) {
  const passOver = (why: string) => ({ kind: 'passed-over', set: logged, why }) as const;
  if (logged.date > date) return passOver('It is dated after the session.');
  const loads = logged.bodyWeight
    ? reachableLoads(lift.equipment, useOf(lift.exercise, gym, logged.bodyWeight))
    : lift.loads;
  if (loads.kind === 'none') return passOver(loads.message);
  const load = movedLoad(loads, loadFromValue(logged.load));
  if (load <= 0)
    return passOver('Nothing would have been moved: the help is as large as the load.');
  const set: PerformedSet = {
    load,
    reps: logged.reps,
    end: logged.end,
    day: dayNumber(logged.date),
    ...(logged.tempo && { secondsPerRep: secondsPerRep(logged.tempo) }),
  };
  return { kind: 'set', set, date: logged.date } as const;
}
