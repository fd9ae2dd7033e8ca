import { capacityKept, type WarmupSet, type WarmupState } from './capacityKept.ts';
import { rampRules } from './rampRules.ts';

/** A step before its repetitions are settled. */
export type SetPlan = Omit<WarmupSet, 'reps'>;

/** Steps with their repetitions; `enough` is false when the capacity is not kept even so. */
export interface RampSets {
  readonly sets: readonly WarmupSet[];
  readonly enough: boolean;
}

/**
 * Repetitions of each step, and the rests: at most what the rules give for so many steps, and all
 * cut by the same share until the capacity is kept; never rising, one at least. Where single
 * repetitions still cost too much, the last rest is lengthened, up to five minutes.
 *
 * @param plans steps, lightest first.
 * @param after sets that follow the steps as they are.
 * @param leastCapacity least capacity at the first work rep, against no ramp at all.
 */
export function rampSets(
  plans: readonly SetPlan[],
  after: readonly WarmupSet[],
  state: WarmupState,
  leastCapacity: number,
): RampSets {
  const keeps = (sets: readonly WarmupSet[]) =>
    capacityKept([...sets, ...after], state).likely >= leastCapacity;
  const most = mostReps(plans);
  let sets: readonly WarmupSet[] = [];
  for (let twentieths = 20; twentieths >= 0; twentieths -= 1) {
    sets = plans.map((plan, index) => ({
      ...plan,
      reps: Math.max(1, Math.round(((most[index] ?? 1) * twentieths) / 20)),
    }));
    if (keeps(sets)) return { sets, enough: true };
  }
  while (
    (sets.at(-1)?.restSeconds ?? rampRules.mostLastRestSeconds) < rampRules.mostLastRestSeconds
  ) {
    sets = sets.map((set, index) =>
      index === sets.length - 1 ? { ...set, restSeconds: set.restSeconds + 30 } : set,
    );
    if (keeps(sets)) return { sets, enough: true };
  }
  return { sets, enough: false };
}

function mostReps(plans: readonly SetPlan[]): readonly number[] {
  const byCount: readonly number[] = rampRules.mostReps[plans.length - 1] ?? [];
  return plans.map(({ shareOfMax }, index) => {
    const reps = byCount[index] ?? 1;
    if (shareOfMax >= rampRules.oneRepFrom) return 1;
    return shareOfMax >= rampRules.twoRepsFrom ? Math.min(2, reps) : reps;
  });
}
