import type { Bridge, ReachableLoad } from '@windlass/core/equipment';
import type { Comeback, LoadAdvice, StallCause, WindowChance } from '@windlass/core/progress';
import type { Caution } from '@windlass/core/safety';
import type { NoAnswer } from '../contract/Answer.ts';
import { said } from './words.ts';

/** Advice that names a load. */
export interface LoadedAdvice {
  readonly kind: Exclude<LoadAdvice['kind'], 'stop' | 'no-history' | 'no-loads'>;
  readonly load: ReachableLoad;
  readonly aim: number;
  readonly says: string;
  readonly chance?: WindowChance;
  readonly nextStep?: { readonly to: ReachableLoad; readonly percent: number };
  readonly bridges?: readonly Bridge[];
  readonly causes?: readonly StallCause[];
  readonly comeback?: Comeback;
}

/** The load of an advice, or why it names none. */
export function loadedAdvice(advice: LoadAdvice): LoadedAdvice | NoAnswer {
  switch (advice.kind) {
    case 'stop':
      return {
        kind: 'none',
        reason: 'pain',
        label: said.nextLoad,
        headline: said.none,
        message: advice.says,
        cautions: advice.signs.map(({ id, sign, action, ask, sources }): Caution => {
          return {
            id,
            level: 'caution',
            what: `${sign}.`,
            why: said.painWhy,
            instead: action,
            ask,
            sources,
          };
        }),
      };
    case 'no-history':
      return none('no-history', said.noHistory);
    case 'no-loads':
      return none(advice.why.reason, advice.why.message);
    case 'come-back': {
      const { comeback } = advice;
      if (comeback.kind === 'no-load') return none('nothing-light-enough', comeback.message);
      const { start: load, reps: aim, says } = comeback;
      return { kind: 'come-back', load, aim, says, comeback };
    }
    default:
      return advice;
  }
}

function none(reason: string, message: string): NoAnswer {
  return { kind: 'none', reason, label: said.nextLoad, headline: said.none, message };
}
