import { type Compartments, integrateCarrying } from './integrateCarrying.ts';

/** Endurance time of a sustained load by numeric integration, from rest when nothing else is said. */
export function integrateThreeCompartment(
  load: number,
  fatigue: number,
  recovery: number,
  start: Compartments = [0, 1, 0],
): number {
  return integrateCarrying({ load, fatigue, recovery, start }).seconds;
}
