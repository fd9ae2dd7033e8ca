import { enduranceCurves, kappaAtTempo, type RepCurve } from '../strength/index.ts';
import type { PairInput } from './Pair.ts';

/** The rep curve of one side of a pair at its pace. */
export function paceCurve(side: PairInput['isolation' | 'compound']): RepCurve {
  const { kappa, alpha } = side.curve ?? enduranceCurves[side.exercise.endurance];
  return { kappa: kappaAtTempo(kappa, side.secondsPerRep).kappa.likely, alpha };
}
