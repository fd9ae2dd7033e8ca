import { requireNumber } from '../basis/index.ts';
import { freshCapacity, type MuscleShares } from '../capacity/index.ts';
import { LARGEST_LOAD, type Load } from '../load/index.ts';
import { generalCurve } from '../strength/index.ts';
import type { WarmupState } from './capacityKept.ts';
import type { RampQuestion } from './Ramp.ts';
import { rampRules } from './rampRules.ts';

/** The numbers of a ramp question, checked, with those that were left out. */
export interface RampSettings {
  readonly work: Load;
  readonly workShare: number;
  readonly secondsPerRep: number;
  readonly secondsPerPiece: number;
  readonly pieceCost: number;
  readonly leastCapacity: number;
  readonly alreadyWarm: number;
  readonly state: WarmupState;
}

const ALL_AS_ONE: MuscleShares = { lift: 1 };

/** @throws RangeError for numbers out of the ranges given in {@link RampQuestion}. */
export function rampSettings(question: RampQuestion): RampSettings {
  const { work, workShare, secondsPerRep = 2, secondsPerPiece = 4, alreadyWarm = 0 } = question;
  const { percentOffPerPiece = 2.5, leastCapacity = rampRules.leastCapacity } = question;
  requireNumber('planRamp', 'work in steps', work, 1, LARGEST_LOAD);
  requireNumber('planRamp', 'workShare', workShare, 0.2, 1);
  requireNumber('planRamp', 'secondsPerRep', secondsPerRep, 1, 10);
  requireNumber('planRamp', 'secondsPerPiece', secondsPerPiece, 0, 60);
  requireNumber('planRamp', 'alreadyWarm', alreadyWarm, 0, 1);
  requireNumber('planRamp', 'percentOffPerPiece', percentOffPerPiece, 0, 10);
  requireNumber('planRamp', 'leastCapacity', leastCapacity, 0.5, 0.99);
  return {
    work,
    workShare,
    secondsPerRep,
    secondsPerPiece,
    pieceCost: Math.round((10 * percentOffPerPiece) ** 2),
    leastCapacity,
    alreadyWarm,
    state: {
      muscles: question.muscles ?? ALL_AS_ONE,
      start: question.start ?? freshCapacity(),
      curve: question.curve ?? generalCurve,
    },
  };
}
