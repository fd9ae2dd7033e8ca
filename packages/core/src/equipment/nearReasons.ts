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

/** Why nothing in a list is heavier than a load. */
export function nothingHeavier({ loads }: LoadList): 'nothing-to-add' | 'heaviest-is-lighter' {
  return loads.length === 1 ? 'nothing-to-add' : 'heaviest-is-lighter';
}

/** No choice, with its sentence. */
export function noChoice(reason: Exclude<NearReason, 'between-two-loads'>): NoChoice {
  return { kind: 'none', reason, message: nearMessage(reason) };
}
