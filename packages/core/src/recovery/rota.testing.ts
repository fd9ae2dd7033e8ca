import type { RotaSession } from './Calendar.ts';

/** An hour that leaves muscles to be waited for so many hours each. */
export function session(id: string, muscles: Record<string, number>): RotaSession {
  return { id, name: id, minutes: 60, muscles };
}
