import { evidenceFigures } from '../evidenceFigures.ts';
import type { LogDensity } from '../grid/Axis.ts';
import { blur } from '../grid/blur.ts';
import type { BeliefState } from './BeliefState.ts';

/** The belief on a day before any set of that day: the usual strength, and it with an unknown form. */
export function openDay(usual: LogDensity, day: number): BeliefState {
  const today = blur(usual, 'columns', evidenceFigures.day, 'empty');
  return { day, usual, today, before: usual, sets: [] };
}
