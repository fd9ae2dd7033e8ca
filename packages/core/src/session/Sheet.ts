import type { Band } from '../basis/index.ts';
import type { LoadValue } from '../load/index.ts';
import type { Adviser } from '../safety/index.ts';
import type { NextTime, SessionMinutes } from './SessionPlan.ts';

/** A load on a sheet: for machines, for people, and how it is put together. */
export interface SheetLoad {
  /** The number that is counted up or read off on this equipment. */
  readonly value: LoadValue;
  /** The same for people, with what it counts: `≈53.08 kg in total, with the bar`. */
  readonly words: string;
  /** How it is put together: `each side 15 kg + 1.25 kg`. */
  readonly loading: string;
}

/** A warm-up set on a sheet. */
export interface SheetStep {
  readonly load: SheetLoad;
  readonly reps: number;
  readonly restSeconds: number;
  /** What the hands do before it. */
  readonly change: string;
}

/** A work set on a sheet. */
export interface SheetSet {
  readonly reps: Band;
  readonly seconds: Band;
  readonly chance: number;
}

/** How a lift is done in rounds with its neighbour. */
export interface SheetJoin {
  readonly kind: 'pair' | 'in-turn';
  /** `first` goes with the lift below it, `second` with the one above. */
  readonly place: 'first' | 'second';
  readonly transitionSeconds: number;
  /** After a round; none where there is one round. */
  readonly waitSeconds?: number;
  /** What the first lift does to the second, and what is to be said about it. */
  readonly notes: readonly string[];
}

/** A stage of a set that goes on past lifting failure. */
export interface SheetStage {
  /** `hold in the middle position, 20 s at most` */
  readonly words: string;
  /** Repetitions or lowerings; left out for a hold. */
  readonly count?: Band;
  readonly seconds: Band;
}

/** How the last set of a lift goes on past lifting failure. */
export interface SheetChain {
  readonly stages: readonly SheetStage[];
  readonly needs: readonly string[];
  readonly notes: readonly string[];
  /** For whom it is not planned. */
  readonly notFor: readonly string[];
}

/** An exercise on a sheet, with its load. */
export interface SheetLift {
  readonly kind: 'planned';
  readonly name: string;
  readonly equipment: string;
  readonly tempo: string;
  /** `Lift 2 s, pause 1 s, lower 3 s`, in the order in which they happen. */
  readonly count: string;
  readonly window: { readonly minReps: number; readonly maxReps: number };
  readonly load: SheetLoad;
  readonly warmUp: readonly SheetStep[];
  /** Why there is no warm-up set; empty where there are some. */
  readonly warmUpNote: string;
  /** What the hands do to get to the work load. */
  readonly changeToWork: string;
  readonly sets: readonly SheetSet[];
  readonly restSeconds: number;
  /** How its sets are done in rounds with those of its neighbour. */
  readonly join?: SheetJoin;
  /** How its last set goes on. */
  readonly chain?: SheetChain;
  /** For which muscles it was chosen, and what speaks for it. */
  readonly chosenFor?: readonly string[];
  /** What somebody has fixed, each with what would have been chosen. */
  readonly fixed: readonly string[];
  /** Wishes that were not followed, and why. */
  readonly refused: readonly string[];
  /** What ends a set, and why this load. */
  readonly notes: readonly string[];
}

/** An exercise without history on a sheet: the first trial set and how to go on. */
export interface SheetFinding {
  readonly kind: 'finding';
  readonly name: string;
  readonly equipment: string;
  readonly tempo: string;
  readonly count: string;
  readonly window: { readonly minReps: number; readonly maxReps: number };
  readonly firstLoad: SheetLoad;
  readonly reps: number;
  readonly chosenFor?: readonly string[];
  readonly fixed: readonly string[];
  readonly refused: readonly string[];
  readonly notes: readonly string[];
}

/** An exercise that is left out, and why. */
export interface SheetLeftOut {
  readonly kind: 'left-out';
  readonly name: string;
  readonly reason: string;
  /** What to do instead, best first. */
  readonly exchanges: readonly {
    readonly name: string;
    readonly equipment: string;
    readonly reasons: readonly string[];
  }[];
}

/** What a time limit took. */
export interface SheetLimit {
  readonly minutesAtMost: number;
  readonly withoutMinutes: number;
  /** The least useful first. */
  readonly dropped: readonly { readonly message: string; readonly minutesSaved: number }[];
  /** What taking turns would save instead. */
  readonly turns?: string;
}

/** When the same muscles are ready again. */
export interface SheetNext {
  /** The day to plan for. */
  readonly date: string;
  readonly isFixed: boolean;
  /** One, five and nine people in ten are ready by then; hours from the beginning of this session. */
  readonly earliest: NextTime;
  readonly likely: NextTime;
  readonly cautious: NextTime;
  readonly notes: readonly string[];
}

/** A caution on a sheet. */
export interface SheetCaution {
  readonly level: 'note' | 'caution' | 'stop';
  readonly what: string;
  readonly why: string;
  readonly instead: string;
  readonly ask: readonly Adviser[];
}

/** A session in words and numbers, for people to follow and for machines to read. */
export interface SessionSheet {
  readonly kind: 'sheet';
  readonly client: string;
  readonly gym: string;
  readonly date: string;
  readonly minutes: SessionMinutes;
  readonly limit?: SheetLimit;
  readonly lifts: readonly (SheetLift | SheetFinding | SheetLeftOut)[];
  readonly next?: SheetNext;
  /** Wishes for the whole session that were not followed, and why. */
  readonly refused: readonly string[];
  readonly cautions: readonly SheetCaution[];
  /** Signs to stop for, with what to do. */
  readonly stop: readonly string[];
}

/** A sheet that only asks: no session before somebody has agreed. */
export interface AskFirstSheet {
  readonly kind: 'ask-first';
  readonly client: string;
  readonly date: string;
  readonly reasons: readonly string[];
  readonly ask: readonly Adviser[];
  readonly cautions: readonly SheetCaution[];
}

/** A sheet that only says that the time is too short. */
export interface TooShortSheet {
  readonly kind: 'too-short';
  readonly client: string;
  readonly date: string;
  readonly message: string;
  readonly cautions: readonly SheetCaution[];
}
