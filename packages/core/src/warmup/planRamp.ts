import { buildRamp } from './buildRamp.ts';
import { judgeAboveWork } from './judgeAboveWork.ts';
import { noRamp } from './noRamp.ts';
import type { RampAnswer, RampQuestion } from './Ramp.ts';
import { rampGear } from './rampGear.ts';
import { rampSettings } from './rampSettings.ts';
import { rampStepCount } from './rampStepCount.ts';
import { rampTargets } from './rampTargets.ts';
import { writeRamp } from './writeRamp.ts';

/**
 * The warm-up sets that lead to a work load on one piece of equipment.
 *
 * How many depends on how far the work load is from the lightest one, on how near it is to the
 * one-rep max, and on how warm the muscles are. Their loads are chosen as a whole: nearness to the
 * wished loads is weighed against pieces handled, from the empty bar to the work load and back,
 * exactly, over all loadings (see `RampPlan`); steps that come to the same load are one. Each
 * has few repetitions, as many as leave the capacity for the first work rep where it should be.
 * Nothing here says that a warm-up prevents injuries: trials give no data on that.
 *
 * @returns `no-ramp` with what to do instead, when nothing is lighter or nothing is needed; `none`
 * when the work load cannot be made here.
 * @throws RangeError for numbers out of the ranges given in `RampQuestion`.
 * @example
 * ```ts
 * import { planRamp } from '@windlass/core/warmup';
 * import { kg, toKg } from '@windlass/core/load';
 * const plates = [20, 10, 5, 2.5].map((value) => ({ weight: { value, unit: 'kg' as const }, pieces: 4 }));
 * const plan = planRamp({
 *   equipment: { kind: 'barbell', id: 'bar', name: 'Bar', bar: { value: 20, unit: 'kg' } },
 *   use: { plates },
 *   work: kg(60),
 *   workShare: 0.8,
 *   experience: 'trained',
 * });
 * plan.kind === 'ramp' ? plan.steps.map(({ load }) => toKg(load.load)) : []; // [20, 40, 50]
 * ```
 */
export function planRamp(question: RampQuestion): RampAnswer {
  const settings = rampSettings(question);
  const gear = rampGear(question);
  if (gear.kind === 'none') return gear;
  const { work, workShare, alreadyWarm, state } = settings;
  const { technical = false, experience, aboveWork } = question;
  const lightest = gear.lighter[0]?.load;
  if (lightest === undefined) return noRamp('work-is-the-lightest-load', gear);
  const demand = { lightest, work, workShare, technical };
  const most = rampStepCount({ ...demand, alreadyWarm });
  if (most === 0) {
    const cold = rampStepCount({ ...demand, alreadyWarm: 0 });
    return noRamp(cold === 0 ? 'light-work' : 'already-warm', gear);
  }
  const heaviestAbove = gear.above.at(-1)?.load;
  const conditions =
    aboveWork &&
    judgeAboveWork({
      experience,
      loadCanBeStopped: aboveWork.loadCanBeStopped,
      curve: state.curve,
      shareAbove: heaviestAbove && (heaviestAbove / work) * workShare,
    });
  const withAbove = conditions?.every(({ met }) => met) ?? false;
  const ramps = (steps: number) =>
    buildRamp(rampTargets(steps, lightest, work, experience), gear, withAbove, settings);
  let built = ramps(most);
  for (let steps = most - 1; steps > 0 && !built.enough; steps -= 1) built = ramps(steps);
  return writeRamp(built, gear, conditions, settings);
}
