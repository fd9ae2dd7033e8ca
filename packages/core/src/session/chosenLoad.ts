import type { ReachableLoad } from '../equipment/index.ts';
import { loadFromValue } from '../load/index.ts';
import type { Limits } from '../safety/index.ts';
import type { LoadChance } from '../strength/index.ts';
import { fixedLoad } from './fixedLoad.ts';
import type { LiftOverruled, LoadReason, Refusal } from './LiftPlan.ts';
import type { WorkLoadQuestion } from './windowQuestion.ts';
import { workLoad } from './workLoad.ts';

/** The work load of a lift, and what became of one that somebody has fixed. */
export type ChosenLoad =
  | {
      readonly kind: 'found';
      readonly work: LoadChance<ReachableLoad>;
      readonly reason: LoadReason;
      readonly lighter: LoadChance<ReachableLoad> | undefined;
      readonly heavier: LoadChance<ReachableLoad> | undefined;
      readonly overruled: Pick<LiftOverruled, 'load'>;
      readonly refused: readonly Refusal[];
    }
  | { readonly kind: 'none'; readonly message: string };

/** The load that somebody has fixed where that is possible, otherwise the one with the best chance. */
export function chosenLoad(question: WorkLoadQuestion, limits: Limits): ChosenLoad {
  const best = workLoad(question);
  const asked = question.lift.intent.overrules?.load;
  const chosen = best.kind === 'found' ? best.work.choice : undefined;
  if (asked === undefined || chosen?.shown === loadFromValue(asked)) return plain(best, []);
  const fixed = fixedLoad(question, asked, limits);
  if (fixed.kind === 'refused') return plain(best, [fixed.refusal]);
  return { ...fixed, kind: 'found', reason: 'fixed', overruled: { load: { chosen } }, refused: [] };
}

function plain(best: ReturnType<typeof workLoad>, refused: readonly Refusal[]): ChosenLoad {
  if (best.kind === 'found') return { ...best, overruled: {}, refused };
  const messages = [best.message, ...refused.map(({ message }) => message)];
  return { kind: 'none', message: messages.join(' ') };
}
