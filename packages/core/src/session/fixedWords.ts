import { findExercise } from '../anatomy/index.ts';
import { inSentence } from '../basis/index.ts';
import type { Unit } from '../load/index.ts';
import type { FindingLift, PlannedLift } from './LiftPlan.ts';
import { loadWords } from './loadingWords.ts';

/** What somebody has fixed in a lift, and what would have been chosen, a sentence each. */
export function fixedWords(
  { overruled, lift }: PlannedLift | FindingLift,
  unit: Unit,
  locale: string,
): readonly string[] {
  const { exercise, variant, load, sets, restSeconds, warmUp } = overruled;
  const words: string[] = [];
  if (exercise) {
    const found = findExercise(exercise.chosen);
    const name = found.kind === 'found' ? found.exercise.name : exercise.chosen;
    words.push(`The exercise is fixed; ${name} would be chosen.`);
  }
  if (variant) {
    const chosen = lift.exercise.variants.find(({ id }) => id === variant.chosen);
    words.push(
      `The set-up is fixed; ${chosen ? `"${inSentence(chosen.name)}"` : 'the usual one'} would be used.`,
    );
  }
  if (load) {
    words.push(
      load.chosen
        ? `The load is fixed; ${loadWords(load.chosen.shown, unit, locale)} would be chosen.`
        : 'The load is fixed; none would be chosen.',
    );
  }
  if (warmUp) {
    const { chosen } = warmUp;
    const steps =
      chosen.kind === 'ramp'
        ? chosen.steps
            .map((step) => `${loadWords(step.load.shown, unit, locale)} × ${step.reps}`)
            .join(', ')
        : 'none';
    words.push(`The warm-up is fixed; ${steps} would be chosen.`);
  }
  if (sets) words.push(`The number of sets is fixed; ${sets.chosen} would be done.`);
  if (restSeconds) words.push(`The rest is fixed; ${restSeconds.chosen} s would be taken.`);
  return words;
}
