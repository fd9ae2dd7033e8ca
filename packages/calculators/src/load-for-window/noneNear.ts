import type { ReachableLoad } from '@windlass/core/equipment';
import type { Unit } from '@windlass/core/load';
import type { LoadChance, WindowAnswer } from '@windlass/core/strength';
import type { NoAnswer } from '../contract/Answer.ts';
import { loadWords } from '../shared/loadWords.ts';
import { formatNumber } from '../ui/formatNumber.ts';
import { said } from './words.ts';

type NoneNear = Extract<WindowAnswer<ReachableLoad>, { kind: 'none-near' }>;

/** No load fails in the window: the nearest on each side, and how to bridge the gap. */
export function noneNear({ reason, lighter, heavier }: NoneNear, unit: Unit): NoAnswer {
  const nearest = [lighter, heavier].flatMap((one) => (one ? [repsWords(one, unit)] : []));
  return {
    kind: 'none',
    reason,
    headline: said.near.headline[reason],
    message: said.near.message(nearest, said.near.bridge[reason]),
  };
}

function repsWords({ choice, reps }: LoadChance<ReachableLoad>, unit: Unit): string {
  return said.near.gives(loadWords(choice.shown, unit), formatNumber(reps.likely, 0));
}
