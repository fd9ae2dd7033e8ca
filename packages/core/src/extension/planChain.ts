import type { ChainRefusal, NearestChain } from './ChainRefusal.ts';
import { chainRefusals } from './chainRefusals.ts';
import { nearestChain } from './nearestChain.ts';
import type { ChainSetting, Stage } from './Stage.ts';

/** A chain that is allowed, or every reason against it and what comes nearest. */
export type ChainPlan =
  | { readonly kind: 'allowed'; readonly stages: readonly Stage[] }
  | {
      readonly kind: 'refused';
      readonly refusals: readonly ChainRefusal[];
      readonly nearest: NearestChain;
    };

/**
 * Whether a set may go on past lifting failure in this way, here, for this person: the chain
 * itself, or every reason against it and the nearest chain that is allowed.
 *
 * A muscle can hold more than it can lift and lower more than it can hold, so the order of the
 * stages follows strength. An allowed chain still ends at once on any stop rule.
 *
 * @param stages in the order in which they are to be done; lifting to failure first.
 * @param setting exercise, help, stops, limits of the person.
 * @returns `allowed`, or `refused` with at least one refusal; never throws on what people ask.
 * @example
 * ```ts
 * import { findExercise } from '@windlass/core/anatomy';
 * import { planChain } from '@windlass/core/extension';
 * import { limitsFor } from '@windlass/core/safety';
 * const found = findExercise('cable-pulldown');
 * const alone = { partner: false, stops: false, limits: limitsFor({}, { alone: true }), switchedOn: true };
 * const plan =
 *   found.kind === 'found' &&
 *   planChain(
 *     [
 *       { kind: 'lift' },
 *       { kind: 'hold', at: 'middle', maxSeconds: 30 },
 *       { kind: 'lower', secondsEach: 6, maxLowerings: 1 },
 *     ],
 *     { exercise: found.exercise, ...alone },
 *   );
 * plan && plan.kind; // 'allowed'
 * ```
 */
export function planChain(stages: readonly Stage[], setting: ChainSetting): ChainPlan {
  const refusals = chainRefusals(stages, setting);
  if (refusals.length === 0) return { kind: 'allowed', stages };
  return { kind: 'refused', refusals, nearest: nearestChain(stages, setting) };
}
