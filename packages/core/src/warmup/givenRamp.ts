import { requireNumber } from '../basis/index.ts';
import { changeLoading, type ReachableLoad } from '../equipment/index.ts';
import { draftStep } from './draftStep.ts';
import { noRamp } from './noRamp.ts';
import type { RampAnswer, RampQuestion } from './Ramp.ts';
import { rampGear } from './rampGear.ts';
import { rampRules } from './rampRules.ts';
import { rampSettings } from './rampSettings.ts';
import { writeRamp } from './writeRamp.ts';
import { writeStep } from './writeStep.ts';

/** A warm-up set that somebody has fixed. */
export interface GivenStep {
  /** Lighter than the work load, from the list of what the equipment makes. */
  readonly load: ReachableLoad;
  /** 1 to 50. */
  readonly reps: number;
  /** By purpose and handling when left out. */
  readonly restSeconds?: number;
}

/**
 * The ramp of warm-up sets that somebody has fixed, in their order: what the hands do between
 * them, the rests, the minutes and what they leave of the capacity. Nothing is chosen and nothing
 * is taken back; where the capacity is not kept, a note says so.
 *
 * @param question as for `planRamp`; `experience`, `alreadyWarm` and `aboveWork` change nothing here.
 * @param given the sets; none gives `no-ramp`.
 * @param workWay how the work load is made; with the fewest pieces when left out.
 * @throws RangeError for repetitions outside 1 to 50, rests outside 0 to 1800 s, or a load that is
 *   not lighter than the work load.
 * @example
 * ```ts
 * import { reachableLoads } from '@windlass/core/equipment';
 * import { kg } from '@windlass/core/load';
 * import { givenRamp } from '@windlass/core/warmup';
 * const equipment = { kind: 'barbell', id: 'bar', name: 'Bar', bar: { value: 20, unit: 'kg' } } as const;
 * const use = { plates: [{ weight: { value: 20, unit: 'kg' }, pieces: 2 }] } as const;
 * const list = reachableLoads(equipment, use);
 * const question = { equipment, use, work: kg(60), workShare: 0.8, experience: 'trained' } as const;
 * const ramp = list.kind === 'loads' && givenRamp(question, [{ load: list.loads[0], reps: 5 }]);
 * ramp && ramp.kind === 'ramp' && ramp.reps; // 5
 * ```
 */
export function givenRamp(
  question: RampQuestion,
  given: readonly GivenStep[],
  workWay?: ReachableLoad,
): RampAnswer {
  const settings = rampSettings(question);
  const gear = rampGear(question);
  if (gear.kind === 'none') return gear;
  for (const { load, reps, restSeconds = 0 } of given) {
    requireNumber('givenRamp', 'load in steps', load.load, 1, settings.work - 1);
    requireNumber('givenRamp', 'reps', reps, 1, 50);
    requireNumber('givenRamp', 'restSeconds', restSeconds, 0, 1800);
  }
  const work = workWay ?? gear.workWays[0];
  const last = given.at(-1);
  if (last === undefined) return noRamp('as-asked', gear);
  const steps = given.map(({ load, reps, restSeconds }, index) => {
    const draft = draftStep(load, given[index - 1]?.load, given[index + 1]?.load ?? work, settings);
    const least = index === given.length - 1 ? rampRules.lastRestSeconds : 0;
    return {
      draft,
      set: { ...draft, reps, restSeconds: restSeconds ?? Math.max(least, draft.restSeconds) },
    };
  });
  const sets = steps.map(({ set }) => set);
  const built = {
    steps: steps.map(({ draft, set }) => writeStep(draft, set)),
    above: undefined,
    work,
    changeToWork: changeLoading(last.load.loading, work.loading),
    sets,
    enough: true,
  };
  const ramp = writeRamp(built, gear, undefined, settings);
  const isKept = ramp.capacityKept.likely >= settings.leastCapacity;
  return isKept ? ramp : writeRamp({ ...built, enough: false }, gear, undefined, settings);
}
