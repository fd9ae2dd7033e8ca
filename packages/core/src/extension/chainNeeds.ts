import type { WayBack } from '../anatomy/index.ts';
import { chainTimes } from './chainTimes.ts';
import type { ChainExercise, Stage } from './Stage.ts';

/** Something that has to be there before the set. */
export interface ChainNeed {
  readonly kind: 'partner' | 'stops-or-partner' | 'way-back' | 'quick-change';
  /** Which stage needs it, counted from 0; null when the whole set does. */
  readonly stage: number | null;
  readonly words: string;
}

const wayBackWords: Readonly<Record<WayBack, string>> = {
  'step-up': 'A step or box to climb back to the top.',
  'other-limb': 'The other hand or leg free to bring the load back up.',
  'both-limbs': 'Both legs or arms to lift, so that one lowers.',
  'legs-push': 'Room to bring the load back with the legs.',
  'hands-push': 'Hands free to push the load back, on the thighs or the platform.',
  'set-down-and-restart': 'A place to set the load down and take it up again.',
  'partner-only': 'A partner who lifts the load back to the top.',
};

/**
 * What a chain needs: a partner, stops, a way to bring the load back to the top without lifting
 * it, a way to take load off at once.
 *
 * @returns empty when nothing is needed beyond the exercise itself.
 * @example
 * ```ts
 * import { chainNeeds } from '@windlass/core/extension';
 * const chinUp = { wayBack: 'step-up', atFailureAlone: 'leave' } as const;
 * const needs = chainNeeds([{ kind: 'lift' }, { kind: 'lower', secondsEach: 5, maxLowerings: 3 }], chinUp);
 * needs.map((need) => need.kind); // ['way-back']
 * ```
 */
export function chainNeeds(
  stages: readonly Stage[],
  { atFailureAlone, wayBack }: Pick<ChainExercise, 'atFailureAlone' | 'wayBack'>,
): readonly ChainNeed[] {
  const needs: ChainNeed[] = [];
  if (atFailureAlone === 'needs-stops') {
    const words =
      'Stops or pins just below the lowest point, tested with the empty bar, or a partner.';
    needs.push({ kind: 'stops-or-partner', stage: null, words });
  }
  if (atFailureAlone === 'needs-partner') {
    needs.push({ kind: 'partner', stage: null, words: 'A partner who takes the load at failure.' });
  }
  stages.forEach((stage, index) => {
    if (stage.kind === 'assisted') {
      const words = 'A partner who knows the lift and helps with what is missing.';
      needs.push({ kind: 'partner', stage: index, words });
    }
    if (stage.kind === 'lighter') {
      const words = `Load that comes off within about ${chainTimes.changeSeconds} seconds: a pin, lighter dumbbells at hand, a partner at the plates.`;
      needs.push({ kind: 'quick-change', stage: index, words });
    }
    if (stage.kind === 'lower' && stage.maxLowerings > 1) {
      needs.push({ kind: 'way-back', stage: index, words: wayBackWords[wayBack] });
    }
  });
  return needs;
}
