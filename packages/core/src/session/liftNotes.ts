import type { Unit } from '../load/index.ts';
import { forecastDoubts } from '../strength/index.ts';
import { dateWords } from './dateWords.ts';
import type { LoadReason, PlannedLift } from './LiftPlan.ts';
import { loadWords } from './loadingWords.ts';

/** What a reader has to know about a lift: what ends a set, why this load, how sure it is. */
export function liftNotes(plan: PlannedLift, unit: Unit, locale: string): readonly string[] {
  const { lift, work, repsInReserve, basis, lighter, heavier } = plan;
  const neighbour = (name: string, other: typeof work | undefined) =>
    other &&
    `${name}: ${loadWords(other.choice.shown, unit, locale)}, ${Math.round(100 * other.inside)} %.`;
  const ending =
    repsInReserve > 0
      ? `End each set with ${repsInReserve} ${repsInReserve === 1 ? 'rep' : 'reps'} left.`
      : 'Go on until the next rep cannot be lifted at this tempo.';
  const alone =
    repsInReserve === 0 && lift.exercise.atFailureAlone === 'needs-stops'
      ? 'Set the stops or pins and try them before the first hard set.'
      : undefined;
  const last =
    plan.chain && repsInReserve > 0 ? 'Only the last set goes until a rep cannot be lifted.' : '';
  return [
    [ending, last, alone ?? ''].filter((part) => part !== '').join(' '),
    `${reasonWords[plan.reason]} ${basisWords(basis, locale)}`,
    ...passedOverWords(basis.passedOver),
    ...work.doubts.map((doubt) => forecastDoubts[doubt].reason),
    ...[neighbour('One lighter', lighter), neighbour('One heavier', heavier)].filter(
      (words) => words !== undefined,
    ),
    ...lift.loads.notes.map(({ message }) => message),
  ];
}

/** How many sets it rests on, and how old the last is. */
function basisWords({ sets, lastDate }: PlannedLift['basis'], locale: string): string {
  const counted = sets === 1 ? '1 set' : `${sets} sets`;
  return lastDate === undefined
    ? `It rests on ${counted}.`
    : `It rests on ${counted}, the last of ${dateWords(lastDate, locale)}.`;
}

/** How many sets were not used, by reason. */
function passedOverWords(passedOver: PlannedLift['basis']['passedOver']): readonly string[] {
  const counts = new Map<string, number>();
  for (const { why } of passedOver) counts.set(why, (counts.get(why) ?? 0) + 1);
  return [...counts].map(
    ([why, count]) => `Not used: ${count === 1 ? '1 set' : `${count} sets`}, ${why}.`,
  );
}

const reasonWords: Readonly<Record<LoadReason, string>> = {
  'best-chance': 'This load has the best chance of ending the first set inside the window.',
  'careful-first':
    'The best load is not sure enough yet, so this is the heaviest one that seldom ends the first set too early.',
  fixed: 'This load is fixed.',
  capped: 'This is the heaviest load that the limits for this person allow.',
};
