import type { Load } from '../load/index.ts';
import type { NearReason, NoChoice } from './LoadChoice.ts';
import type { LoadList } from './Loading.ts';

const MESSAGES: Readonly<Record<NearReason, string>> = {
  'between-two-loads': 'The load lies between two that this equipment can make.',
  'lightest-is-heavier':
    'The lightest load here, the bar or the first weight, is heavier than that.',
  'heaviest-is-lighter': 'That is more than this equipment can make with what is in stock.',
  'nothing-to-add': 'There is only one load here: nothing in stock can be added to it.',
};

/** The sentence for a reason. */
export function nearMessage(reason: NearReason): string {
  return MESSAGES[reason];
}

/** Why a load is not in a list. */
export function nearReason(list: LoadList, target: Load): NearReason {
  if (target < list.loads[0].load) return 'lightest-is-heavier';
  if (list.loads.length === 1) return 'nothing-to-add';
  return list.loads.some(({ load }) => load > target) ? 'between-two-loads' : 'heaviest-is-lighter';
}

/** No choice, with its sentence. */
export function noChoice(reason: Exclude<NearReason, 'between-two-loads'>): NoChoice {
  return { kind: 'none', reason, message: MESSAGES[reason] };
}
