import type { ReachableLoad } from '@windlass/core/equipment';
import type { Unit } from '@windlass/core/load';
import type { LoadChance, WindowAnswer } from '@windlass/core/strength';
import type { NoAnswer } from '../contract/Answer.ts';
import { loadWords } from '../shared/loadWords.ts';
import { formatNumber } from '../ui/formatNumber.ts';

type NoneNear = Extract<WindowAnswer<ReachableLoad>, { kind: 'none-near' }>;

const HEADLINES = {
  'all-too-heavy': 'All too heavy',
  'all-too-light': 'All too light',
  gap: 'Falls in a gap',
} as const;

/** No load fails in the window: the nearest on each side, and how to bridge the gap. */
export function noneNear({ reason, lighter, heavier }: NoneNear, unit: Unit): NoAnswer {
  const nearest = [lighter, heavier].flatMap((one) => (one ? [repsWords(one, unit)] : []));
  const bridge = {
    'all-too-heavy': 'Widen the window downwards or take lighter equipment.',
    'all-too-light': 'Widen the window upwards, slow the tempo, or use one side at a time.',
    gap: 'Widen the window, or change the tempo: slower makes the lighter one fit.',
  }[reason];
  return {
    kind: 'none',
    reason,
    headline: HEADLINES[reason],
    message: `${nearest.join('; ')}. ${bridge}`,
  };
}

function repsWords({ choice, reps }: LoadChance<ReachableLoad>, unit: Unit): string {
  return `${loadWords(choice.shown, unit)} gives about ${formatNumber(reps.likely, 0)} reps`;
}
