import { checkTempo } from './checkTempo.ts';
import type { Tempo } from './Tempo.ts';

/** Stops a programmer's mistake: a tempo that {@link checkTempo} refuses. */
export function requireTempo(where: string, tempo: Tempo): void {
  const checked = checkTempo(tempo);
  if (checked.ok) return;
  throw new RangeError(`${where}: ${checked.problems.map((problem) => problem.message).join(' ')}`);
}
