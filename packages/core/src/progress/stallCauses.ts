import { craven2022 } from '../recovery/recoverySources.ts';
import type { LiftSession } from './LiftSession.ts';
import { logCauses } from './review/logCauses.ts';
import type { StallCause } from './review/StallCause.ts';

/** What is known for finding causes. */
export interface StallCausesQuestion {
  /** The sessions of the exercise, oldest first, those before the stall included. */
  readonly sessions: readonly LiftSession[];
  /** Hours that the slowest muscle of the exercise asks for between sessions, if it was worked out. */
  readonly hoursNeeded?: number | undefined;
}

/**
 * What may hold a lift back, and how to test each: one change at a time.
 *
 * First what the log shows; then sleep, food and illness, which have to be asked before the
 * programme is blamed; last what the log rules out.
 *
 * @returns never empty: what no log can show is always asked.
 * @example
 * ```ts
 * import { stallCauses } from '@windlass/core/progress';
 * const ids = stallCauses({ sessions: [] }).map(({ id }) => id);
 * ids; // ['short-sleep', 'too-little-food', 'illness-or-strain']
 * ```
 */
export function stallCauses(question: StallCausesQuestion): readonly StallCause[] {
  const found = logCauses.flatMap(({ id, test, find }): StallCause[] => {
    const finding = find(question);
    return finding ? [{ id, test, ...finding }] : [];
  });
  const isShown = ({ standing }: StallCause) => standing === 'in-the-log';
  return [...found.filter(isShown), ...asked, ...found.filter((cause) => !isShown(cause))];
}

const asked: readonly StallCause[] = [
  {
    id: 'short-sleep',
    standing: 'ask',
    says: 'Were several of the last nights 6 hours or shorter?',
    test: 'Two weeks with longer nights and nothing else changed: do the repetitions come back?',
    source: craven2022,
  },
  {
    id: 'too-little-food',
    standing: 'ask',
    says: 'Has body weight fallen, or is less eaten than before?',
    test: 'Two weeks without losing weight: do the repetitions come back?',
  },
  {
    id: 'illness-or-strain',
    standing: 'ask',
    says: 'Is there an illness, a new medicine, or more strain than usual?',
    test: 'Wait with changes until it is over; ask a physician about an illness that stays.',
  },
];
