import { bad, good, type Outcome, type Problem } from '../basis/index.ts';
import { phaseField, phasesInOrder, phaseWords } from './phases.ts';
import type { Tempo, TempoPhase } from './Tempo.ts';
import {
  FAST_LIFT_SECONDS,
  LONGEST_PHASE_SECONDS,
  LONGEST_REP_SECONDS,
  SHORTEST_MOVEMENT_SECONDS,
} from './tempoLimits.ts';

/**
 * A tempo as it is, or what is wrong with it.
 *
 * Each phase takes 0 to 60 seconds in whole milliseconds, a repetition at most 120 seconds, and
 * lowering and lift together at least 0.2: a pause alone is a hold and no repetition.
 * Problems: `tempo.not-seconds`, `tempo.too-fine`, `tempo.phase-too-long`, `tempo.no-movement`,
 * `tempo.rep-too-long`, with the field as path where one is meant.
 *
 * @example
 * ```ts
 * import { checkTempo } from '@windlass/core/tempo';
 * checkTempo({ lowerSeconds: 3, pauseAfterLowerSeconds: 0, liftSeconds: 'X', pauseAfterLiftSeconds: 0 }).ok; // true
 * checkTempo({ lowerSeconds: 0, pauseAfterLowerSeconds: 5, liftSeconds: 0, pauseAfterLiftSeconds: 0 }).ok; // false
 * ```
 */
export function checkTempo(tempo: Tempo): Outcome<Tempo> {
  const phaseProblems = phasesInOrder('lower-first').flatMap((phase) => checkPhase(tempo, phase));
  if (phaseProblems.length > 0) return bad(...phaseProblems);
  const liftSeconds = tempo.liftSeconds === 'X' ? FAST_LIFT_SECONDS : tempo.liftSeconds;
  if (tempo.lowerSeconds + liftSeconds < SHORTEST_MOVEMENT_SECONDS) {
    return bad({
      code: 'tempo.no-movement',
      path: [],
      message: `Give lowering and lift together at least ${SHORTEST_MOVEMENT_SECONDS} seconds; a pause alone is a hold and no repetition.`,
      params: { shortest: SHORTEST_MOVEMENT_SECONDS },
    });
  }
  const repSeconds =
    tempo.lowerSeconds + tempo.pauseAfterLowerSeconds + liftSeconds + tempo.pauseAfterLiftSeconds;
  if (repSeconds > LONGEST_REP_SECONDS) {
    return bad({
      code: 'tempo.rep-too-long',
      path: [],
      message: `Keep one repetition to ${LONGEST_REP_SECONDS} seconds; this one takes ${repSeconds}.`,
      params: { repSeconds, longest: LONGEST_REP_SECONDS },
    });
  }
  return good(tempo);
}

function checkPhase(tempo: Tempo, phase: TempoPhase): readonly Problem[] {
  const seconds = tempo[phaseField[phase]];
  const problem = (name: string, message: string): readonly Problem[] => [
    {
      code: `tempo.${name}`,
      path: [phaseField[phase]],
      message,
      params: { phase, longest: LONGEST_PHASE_SECONDS },
      received: seconds,
    },
  ];
  if (seconds === 'X') return [];
  if (!(seconds >= 0)) {
    return problem('not-seconds', `Give the ${phaseWords[phase]} in seconds, 0 or more.`);
  }
  if (seconds > LONGEST_PHASE_SECONDS) {
    return problem(
      'phase-too-long',
      `Keep the ${phaseWords[phase]} to ${LONGEST_PHASE_SECONDS} seconds or less.`,
    );
  }
  if (Math.round(seconds * 1000) / 1000 !== seconds) {
    return problem('too-fine', `Give the ${phaseWords[phase]} at most 3 decimals of a second.`);
  }
  return [];
}
