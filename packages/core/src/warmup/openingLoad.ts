import type { Load } from '../load/index.ts';
import { rampRules } from './rampRules.ts';

/** The load that a ramp opens with. */
export function openingLoad(lightest: Load, work: Load): Load {
  if (lightest >= rampRules.lightestOpensFrom * work) return lightest;
  return Math.round(rampRules.openingShare * work) as Load;
}
