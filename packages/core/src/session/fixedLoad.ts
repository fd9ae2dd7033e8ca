import type { ReachableLoad } from '../equipment/index.ts';
import { formatLoad, type LoadValue, loadFromValue, toKg } from '../load/index.ts';
import type { Limits } from '../safety/index.ts';
import { type LoadChance, loadForWindow, oneRepMaxKg } from '../strength/index.ts';
import type { Refusal } from './LiftPlan.ts';
import { madeHere } from './madeHere.ts';
import { type WorkLoadQuestion, windowQuestion } from './windowQuestion.ts';

/** A load that somebody has fixed, with its neighbours here, or why it is not taken. */
export type FixedLoad =
  | {
      readonly kind: 'fixed';
      readonly work: LoadChance<ReachableLoad>;
      readonly lighter: LoadChance<ReachableLoad> | undefined;
      readonly heavier: LoadChance<ReachableLoad> | undefined;
    }
  | { readonly kind: 'refused'; readonly refusal: Refusal };

/** Fewer likely repetitions than this are a single, whatever it is called. */
const SINGLE = 2;

/** The load that somebody has fixed, where the equipment makes it and the person's limits allow it. */
export function fixedLoad(
  question: WorkLoadQuestion,
  asked: LoadValue,
  { intensityCap, maximalSingles }: Pick<Limits, 'intensityCap' | 'maximalSingles'>,
): FixedLoad {
  const { lift, posterior } = question;
  const { loads } = lift.loads;
  const made = madeHere(lift, asked);
  if ('code' in made) return { kind: 'refused', refusal: made };
  const place = loads.indexOf(made);
  const around = loads.slice(Math.max(0, place - 1), place + 2);
  const answer = loadForWindow(windowQuestion(question, around));
  const all = answer.kind === 'no-loads' ? [] : answer.all;
  const at = all.findIndex(({ choice }) => choice === made);
  const work = all[at];
  if (work === undefined)
    return refused(
      'session.load-not-here',
      `${lift.exercise.name} cannot be planned with a load of nothing.`,
    );
  const percent = Math.round((100 * toKg(made.load)) / oneRepMaxKg(posterior, 0.8, 'today').likely);
  const percentAtMost = Math.round(100 * (intensityCap?.share ?? 1));
  if (intensityCap && percent > percentAtMost) {
    const words = intensityCap.reasons.map((reason) => reason.words).join(' ');
    return refused(
      'session.load-over-limit',
      `${given(asked)} is about ${percent} % of today's one-rep max, and at most ${percentAtMost} % may be used. ${words}`,
    );
  }
  if (maximalSingles.kind !== 'allowed' && work.reps.likely < SINGLE) {
    const words = maximalSingles.reasons.map((reason) => reason.words).join(' ');
    return refused(
      'session.load-is-a-single',
      `${given(asked)} would be a maximal single, and none is to be done. ${words}`,
    );
  }
  return { kind: 'fixed', work, lighter: all[at - 1], heavier: all[at + 1] };
}

function given(value: LoadValue): string {
  return formatLoad(loadFromValue(value), { unit: value.unit });
}

function refused(code: string, message: string): FixedLoad {
  return { kind: 'refused', refusal: { what: 'load', code, message } };
}
