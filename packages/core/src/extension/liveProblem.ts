import type { Problem } from '../basis/index.ts';
import type { LiveSetEvent } from './LiveSet.ts';
import type { LiveStanding } from './Standing.ts';

/** What is wrong with an event at this point of a set; null when nothing is. */
export function liveProblem(standing: LiveStanding, event: LiveSetEvent): Problem | null {
  const { kind, atSeconds } = event;
  if (!Number.isFinite(atSeconds) || atSeconds < standing.lastAt) {
    return {
      code: 'extension.live-time-runs-back',
      path: ['atSeconds'],
      message: `The event needs a time of ${standing.lastAt} s or later, the time of the event before.`,
      params: { earliest: standing.lastAt },
      received: atSeconds,
    };
  }
  if (!standing.next.includes(kind)) {
    const now = standing.next.join(', ');
    return {
      code: standing.end ? 'extension.live-set-ended' : 'extension.live-not-now',
      path: ['kind'],
      message: standing.end
        ? 'The set has ended; only a sign to stop for can still be added.'
        : `"${kind}" cannot come now; possible are: ${now}.`,
      params: { kind, possible: now },
      received: kind,
    };
  }
  if (kind === 'stopped' && event.repsLeft !== undefined && !isCount(event.repsLeft)) {
    return {
      code: 'extension.live-reps-left',
      path: ['repsLeft'],
      message: 'Repetitions left are a whole number from 0 to 50.',
      received: event.repsLeft,
    };
  }
  return null;
}

function isCount(value: number): boolean {
  return Number.isInteger(value) && value >= 0 && value <= 50;
}
