import type { CapacityState } from '../capacity/index.ts';
import { doSet } from './doSet.ts';
import { joinRefusals } from './joinRefusals.ts';
import { knownLift } from './knownLift.ts';
import type { LiftFatigue } from './LiftFatigue.ts';
import type { Refusal } from './LiftPlan.ts';
import { liftLoad } from './liftLoad.ts';
import { loadedLift } from './loadedLift.ts';
import { loweringsLeft } from './loweringsLeft.ts';
import { pairEffect } from './pairEffect.ts';
import type { LiftPlanner, LiftQuestion, PlannedLiftAndState } from './planLift.ts';
import { planRounds } from './planRounds.ts';
import { begun, beside, rested, worked } from './roundFatigue.ts';
import { setWait } from './setWait.ts';
import { together } from './together.ts';

const LONGEST_TRANSITION = 600;

/**
 * Two lifts in rounds. The first one's set tires the second one, whose load follows: it is the one
 * with the best chance from what its muscles have left after the first set of the first lift and
 * the way over.
 *
 * Where the two cannot be joined the first is planned by itself, with the reason, and the second is
 * left to come after it.
 *
 * @param straight plans one lift by itself.
 */
export function planJoined(
  question: LiftQuestion,
  { how, second }: NonNullable<LiftQuestion['joined']>,
  straight: LiftPlanner,
): PlannedLiftAndState {
  const { joined: _, ...first } = question;
  if (!(how.transitionSeconds >= 0 && how.transitionSeconds <= LONGEST_TRANSITION)) {
    const message = `Give the seconds between two joined lifts as a number from 0 to ${LONGEST_TRANSITION}.`;
    return apart([{ what: 'join', code: 'session.join-transition', message }]);
  }
  const knownFirst = knownLift(first);
  const knownSecond = knownLift(withLoweringsLeft(second, knownFirst));
  if (knownFirst.kind !== 'known' || knownSecond.kind !== 'known') {
    const message =
      'Two lifts are joined when the loads of both are known: do them apart this time.';
    return apart([{ what: 'join', code: 'session.join-loads-unknown', message }]);
  }
  const a = loadedLift(knownFirst, stateOf(first.start));
  const usual = liftLoad(knownSecond, stateOf(second.start));
  if (a.kind !== 'loaded' || usual.kind === 'left-out') {
    const message = 'Only one of the two lifts has a load here, so there is nothing to join.';
    return apart([{ what: 'join', code: 'session.join-no-load', message }]);
  }
  const opening = doSet(a, first.start, first.lift.intent.sets === 1);
  const over = rested(worked(begun(first.start), opening), how.transitionSeconds);
  const wait = setWait(how, a, opening) + how.transitionSeconds;
  const b = loadedLift(knownSecond, stateOf(beside(rested(begun(second.start), wait), over)));
  const effect =
    how.kind === 'pair'
      ? pairEffect(a, opening.set, { known: knownSecond, usual: usual.work }, how)
      : undefined;
  const refused = joinRefusals(a.known, knownSecond, how, effect);
  if (refused.length > 0) return apart(refused);
  if (b.kind !== 'loaded') {
    const code = 'session.join-too-tired';
    return apart([{ what: 'join', code, message: `After the first lift: ${b.message}` }]);
  }
  return planRounds(a, b, how, effect?.kind === 'effect' ? effect.effect : undefined);

  function apart(refusals: readonly Refusal[]): PlannedLiftAndState {
    return straight({ ...first, refused: [...first.refused, ...refusals] });
  }
}

/** What the first lift's chain leaves of the lowerings that this person may do. */
function withLoweringsLeft(
  second: LiftQuestion,
  first: ReturnType<typeof knownLift>,
): LiftQuestion {
  if (first.kind !== 'known' || !first.chain) return second;
  const { exercise } = first.question.lift;
  const before = [{ exercise, stages: first.chain }];
  return { ...second, limits: loweringsLeft(second.limits, second.lift.exercise, before) };
}

function stateOf({ own, carried }: LiftFatigue): CapacityState {
  return together(own, carried);
}
