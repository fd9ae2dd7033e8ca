import { normalBelow, normalDensity } from '../../basis/index.ts';
import { evidenceFigures } from '../evidenceFigures.ts';
import type { PerformedSet } from '../PerformedSet.ts';
import { failureReps } from './failureReps.ts';

/** Probability (density) of what was seen, where failure has this mean and standard deviation. */
export type Likelihood = (mean: number, spread: number) => number;

/**
 * The likelihood of a set's outcome.
 *
 * A set to failure shows a whole number: the normal probability between half a repetition under and
 * over it, and of everything below one half when not one could be done. A stop with some left is
 * read as that many plus the usual 0.95, with the doubt of such reports added. A stop at the target
 * says only that failure lay beyond. With `slips`, a small share of sets is taken as off by several
 * times the spread, or as saying nothing, so that one wrong note cannot decide.
 */
export function setLikelihood({ reps, end }: PerformedSet, slips: boolean): Likelihood {
  const plain = plainLikelihood(reps, end);
  if (!slips) return plain.chance;
  const { share, times, anything } = evidenceFigures.slip;
  const nothing = anything * plain.whenAnything;
  return (mean, spread) =>
    (1 - share) * plain.chance(mean, spread) +
    (share - anything) * plain.chance(mean, spread * times) +
    nothing;
}

interface Plain {
  readonly chance: Likelihood;
  /** Probability of the outcome when it says nothing: one count among sixty, or one side of two. */
  readonly whenAnything: number;
}

function plainLikelihood(reps: number, end: PerformedSet['end']): Plain {
  if (end.kind === 'failure') {
    if (reps === 0) {
      return { chance: (mean, spread) => normalBelow((0.5 - mean) / spread), whenAnything: 1 / 60 };
    }
    return {
      chance: (mean, spread) => {
        const low = (reps - 0.5 - mean) / spread;
        const high = (reps + 0.5 - mean) / spread;
        // on the upper side both are mirrored, where the tail keeps its digits
        return low > 0
          ? normalBelow(-low) - normalBelow(-high)
          : normalBelow(high) - normalBelow(low);
      },
      whenAnything: 1 / 60,
    };
  }
  if (end.kind === 'reserve') {
    const { reps: total, doubt } = failureReps(reps, end.repsLeft);
    return {
      chance: (mean, spread) => {
        const both = Math.hypot(spread, doubt);
        return normalDensity((total - mean) / both) / both;
      },
      whenAnything: 1 / 60,
    };
  }
  const edge = reps + end.atLeast - 0.5;
  return { chance: (mean, spread) => normalBelow((mean - edge) / spread), whenAnything: 0.5 };
}
