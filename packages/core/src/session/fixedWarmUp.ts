import type { ReachableLoad } from '../equipment/index.ts';
import { type GivenStep, givenRamp, type RampAnswer, type RampQuestion } from '../warmup/index.ts';
import type { FixedWarmUpSet } from './Intent.ts';
import type { Refusal } from './LiftPlan.ts';
import type { Lift } from './liftOf.ts';
import { madeHere } from './madeHere.ts';

/** A warm-up as somebody has fixed it, or why it is not taken. */
export type FixedWarmUp =
  | { readonly kind: 'fixed'; readonly warmUp: RampAnswer }
  | { readonly kind: 'refused'; readonly refusal: Refusal };

const MOST_REPS = 50;

/** The warm-up sets that somebody has fixed, where the equipment makes their loads. */
export function fixedWarmUp(
  lift: Lift,
  question: RampQuestion,
  asked: readonly FixedWarmUpSet[],
): FixedWarmUp {
  const steps: GivenStep[] = [];
  for (const { load, reps } of asked) {
    const made = madeHere(lift, load);
    if ('code' in made) return { kind: 'refused', refusal: { ...made, what: 'warm-up' } };
    const wrong = whatIsWrong(made, reps, question);
    if (wrong) return refused(wrong.code, wrong.message);
    steps.push({ load: made, reps });
  }
  return { kind: 'fixed', warmUp: givenRamp(question, steps) };
}

function whatIsWrong({ load }: ReachableLoad, reps: number, { work }: RampQuestion) {
  if (load <= 0 || load >= work) {
    const message = 'A warm-up set is lighter than the work load. Fix a lighter one, or none.';
    return { code: 'session.warm-up-too-heavy', message };
  }
  if (!Number.isInteger(reps) || reps < 1 || reps > MOST_REPS) {
    const message = `Fix the repetitions of a warm-up set as a whole number from 1 to ${MOST_REPS}.`;
    return { code: 'session.warm-up-reps', message };
  }
  return undefined;
}

function refused(code: string, message: string): FixedWarmUp {
  return { kind: 'refused', refusal: { what: 'warm-up', code, message } };
}
