import type { ReachableLoad } from '../equipment/index.ts';
import { toKg } from '../load/index.ts';
import {
  type LoadChance,
  loadForWindow,
  oneRepMaxKg,
  type WindowAnswer,
} from '../strength/index.ts';
import type { LoadReason } from './LiftPlan.ts';
import type { Lift } from './liftOf.ts';
import { nearChoices } from './nearChoices.ts';
import { type WorkLoadQuestion, windowQuestion } from './windowQuestion.ts';

/** The load of a lift with its neighbours, or why none can be given. */
export type WorkLoad =
  | {
      readonly kind: 'found';
      readonly work: LoadChance<ReachableLoad>;
      readonly reason: LoadReason;
      readonly lighter: LoadChance<ReachableLoad> | undefined;
      readonly heavier: LoadChance<ReachableLoad> | undefined;
    }
  | { readonly kind: 'none'; readonly message: string };

/**
 * The load with the best chance, among those this lift can make and may use. A belief that rests
 * on sets from one side only, or that fails too early too often, gets the careful load first.
 */
export function workLoad(question: WorkLoadQuestion): WorkLoad {
  const { lift, posterior, intensityCap } = question;
  const { loads } = lift.loads;
  const heaviest = intensityCap * oneRepMaxKg(posterior, 0.8, 'today').likely;
  const allowed = intensityCap < 1 ? loads.filter(({ load }) => toKg(load) <= heaviest) : loads;
  const isCapped = allowed.length < loads.length;
  const asked = windowQuestion(question, allowed);
  const answer = loadForWindow({ ...asked, choices: nearChoices(asked) });
  if (answer.kind === 'found') return found(answer, isCapped ? allowed.at(-1) : undefined);
  if (answer.kind === 'none-near' && isCapped && answer.lighter) {
    const lighter = answer.all[answer.all.indexOf(answer.lighter) - 1];
    return { kind: 'found', work: answer.lighter, reason: 'capped', lighter, heavier: undefined };
  }
  return { kind: 'none', message: noneMessage(lift, answer) };
}

/** Above this chance of failing before the window the careful load goes first. A convention. */
const TOO_OFTEN_EARLY = 0.4;

/** Chances that differ by less than this are equal to a lifter; fewer pieces to carry decide. */
const EQUAL_CHANCE = 0.01;

function found(
  answer: Extract<WindowAnswer<ReachableLoad>, { kind: 'found' }>,
  cap: ReachableLoad | undefined,
): WorkLoad {
  const { best, careful, all } = answer;
  const isEarly = best.before > TOO_OFTEN_EARLY && careful !== undefined;
  const work = isEarly ? careful : easiestToLoad(all, best);
  const place = all.indexOf(work);
  return {
    kind: 'found',
    work,
    reason: isEarly ? 'careful-first' : work.choice === cap ? 'capped' : 'best-chance',
    lighter: all[place - 1],
    heavier: all[place + 1],
  };
}

function easiestToLoad(
  all: readonly LoadChance<ReachableLoad>[],
  best: LoadChance<ReachableLoad>,
): LoadChance<ReachableLoad> {
  const equal = all.filter((one) => one.inside > best.inside - EQUAL_CHANCE);
  const pieces = (one: LoadChance<ReachableLoad>) => one.choice.loading.pieces;
  return equal.reduce((easiest, one) => (pieces(one) < pieces(easiest) ? one : easiest));
}

function noneMessage({ exercise, equipment }: Lift, answer: WindowAnswer<ReachableLoad>): string {
  if (answer.kind === 'none-near') {
    if (answer.reason === 'all-too-heavy') {
      return `Everything that ${equipment.name} can make is too heavy for this window in ${exercise.name}: widen the window downwards, or choose other equipment.`;
    }
    if (answer.reason === 'all-too-light') {
      return `Everything that ${equipment.name} can make is too light for this window in ${exercise.name}: widen the window upwards, slow the tempo, or choose other equipment.`;
    }
    return `The window falls between two loads of ${equipment.name} in ${exercise.name}: widen the window, or change the tempo.`;
  }
  return `${equipment.name} has no load that this plan may use for ${exercise.name}.`;
}
