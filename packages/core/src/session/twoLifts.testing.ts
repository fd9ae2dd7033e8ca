import { client, gym, pulldown } from './boathouse.testing.ts';
import type { SessionIntent } from './Intent.ts';
import type { SessionQuestion } from './planSession.ts';

export const row = { ...pulldown, exercise: 'barbell-bent-over-row', equipment: 'short-bar' };
export const press = { ...pulldown, exercise: 'dumbbell-bench-press', equipment: 'dumbbells' };
export const turns = { kind: 'in-turn', transitionSeconds: 20 } as const;

/** The pulldown, then the row. */
export const intent: SessionIntent = {
  date: '2027-03-15',
  unit: 'kg',
  changeSeconds: 120,
  lifts: [pulldown, row],
};
export const question: SessionQuestion = { client, gym, intent };
