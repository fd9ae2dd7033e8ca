import { evidenceFigures } from '../evidenceFigures.ts';
import type { LogDensity } from '../grid/Axis.ts';
import { blur } from '../grid/blur.ts';
import type { BeliefState } from './BeliefState.ts';
import { scatterScale } from './scatterScale.ts';

/** The belief on a day before any set of that day: the usual strength, and it with an unknown form. */
export function openDay(usual: LogDensity, day: number): BeliefState {
  const scale = scatterScale(usual);
  const today = blur(usual, 'columns', (lnKappa) => evidenceFigures.day * scale(lnKappa), 'empty');
  return { day, usual, today, before: usual, sets: [] };
}
