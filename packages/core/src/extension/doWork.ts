import {
  addFatigue,
  type FatigueRates,
  type MuscleFatigue,
  sustainedFatigue,
} from '../capacity/index.ts';

/** Repetitions, carrying a load, or a pause, in the terms of the capacity state. */
export type ChainWork =
  | {
      readonly kind: 'reps';
      readonly reps: number;
      readonly secondsPerRep: number;
      readonly costPerRep: number;
    }
  | {
      readonly kind: 'sustain';
      readonly targetLoad: number;
      readonly seconds: number;
      readonly rates: FatigueRates;
    }
  | { readonly kind: 'rest'; readonly seconds: number };

/** One drawn lifter's fatigue after a piece of work. */
export function doWork(
  fatigue: MuscleFatigue,
  work: ChainWork,
  restPerSecond: number,
): MuscleFatigue {
  switch (work.kind) {
    case 'reps':
      return addFatigue(fatigue, work.reps * work.costPerRep);
    case 'sustain': {
      const fatigued = fatigue.fast + fatigue.slow;
      const input = { targetLoad: work.targetLoad, fatigued, rates: work.rates };
      return addFatigue(fatigue, sustainedFatigue(input, work.seconds) - fatigued);
    }
    case 'rest':
      return {
        fast: fatigue.fast * Math.exp(-restPerSecond * work.seconds),
        slow: fatigue.slow,
      };
  }
}
