import type { PairInput } from '@windlass/core/pairing';
import { enduranceCurves, kappaAtTempo, type RepCurve } from '@windlass/core/strength';

/** The rep curve of one side of a pair at its pace. */
export function curveAtPace({
  exercise,
  secondsPerRep,
}: Pick<PairInput['isolation'], 'exercise' | 'secondsPerRep'>): RepCurve {
  const { kappa, alpha } = enduranceCurves[exercise.endurance];
  return { kappa: kappaAtTempo(kappa, secondsPerRep).kappa.likely, alpha };
}
