import { inSentence } from '@windlass/core/basis';
import type { NoAnswer } from '../contract/Answer.ts';
import type { ReadLog } from './readLog.ts';
import { UnreadPanel } from './UnreadPanel.tsx';
import { said } from './words.ts';

/** There is nothing to review: why, and the rows that could not be read. */
export function noReview(log: ReadLog, reason: keyof typeof said.noReview): NoAnswer {
  const needed = log.missing.map((field) => inSentence(said.holds[field]));
  return {
    kind: 'none',
    reason,
    label: said.nextLoad,
    headline: said.none,
    message: said.noReview[reason](said.list(needed)),
    view: () => <p>{said.readSoFar(log.sets.length, log.unread.length)}</p>,
    ...unreadBelow(log),
  };
}

/** The rows that could not be read, under an answer that is none. */
export function unreadBelow({ unread }: ReadLog): Required<Pick<NoAnswer, 'details'>> {
  return { details: () => <UnreadPanel unread={unread} /> };
}
