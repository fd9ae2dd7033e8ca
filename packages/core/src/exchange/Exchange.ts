import type { Exercise, Movement, MuscleGroup, Variant } from '../anatomy/index.ts';
import type { Adviser, LimitReason, Limits, StopRule } from '../safety/index.ts';
import type { AtHand } from './AtHand.ts';

/** What every question about exercises has in common. */
export interface ExchangeSetting {
  /** From `limitsFor`: joint complaints, clinician's list, hands, supports. */
  readonly limits: Limits;
  readonly atHand: AtHand;
  /** Nobody is there who can take the load. */
  readonly alone?: boolean;
  /** Stops or pins that can be set and tried at the bottom. */
  readonly stops?: boolean;
  /** Sets end at lifting failure or past it; true when it is left out. */
  readonly toFailure?: boolean;
  /** Where to look: the library's exercises when it is left out. */
  readonly exercises?: readonly Exercise[];
  /** Longest list of other exercises; 5 when it is left out. */
  readonly most?: number;
}

/** A reason as data: `code` for programs, `words` a full sentence. */
export interface ExchangeReason {
  readonly code: string;
  readonly words: string;
}

/** An exercise that fits, as it is to be set up. */
export interface Suggestion {
  /** With its set-ups already applied. */
  readonly exercise: Exercise;
  /** Set-ups that it needs to fit; empty when it fits as it is. */
  readonly setUps: readonly Variant[];
  /** Further set-ups that fit as well. */
  readonly alsoPossible: readonly Variant[];
  /** Higher fits better. A convention for ranking, with no meaning of its own. */
  readonly score: number;
  readonly reasonsFor: readonly ExchangeReason[];
  readonly reasonsAgainst: readonly ExchangeReason[];
}

/** An exercise near the wanted one that is not offered. */
export interface LeftOut {
  readonly exercise: string;
  readonly reasons: readonly ExchangeReason[];
}

/** Somebody has to be asked before any exchange. */
export interface AskFirst {
  readonly kind: 'ask-first';
  readonly reasons: readonly LimitReason[];
  readonly ask: readonly Adviser[];
}

/** Nothing of the list fits. */
export interface NothingSuitable {
  readonly kind: 'nothing-suitable';
  readonly message: string;
  readonly ask: readonly Adviser[];
  readonly leftOut: readonly LeftOut[];
}

/** What fits instead, and what goes with it. */
export interface ExchangeOptions {
  readonly kind: 'options';
  /** Why the exercise cannot stay as it is; empty when it can. */
  readonly against: readonly ExchangeReason[];
  /** The same exercise set up differently: to try before giving it up. */
  readonly setUps: readonly Suggestion[];
  /** Other exercises, best first. */
  readonly others: readonly Suggestion[];
  readonly leftOut: readonly LeftOut[];
  /** What the clinician could be asked about: the lightest form of what was not allowed. */
  readonly askAbout: readonly string[];
  readonly notes: readonly ExchangeReason[];
  /** Signs that end whatever is tried. */
  readonly stop: readonly StopRule[];
}

/** The answer to {@link exchangeFor}. */
export type Exchange = ExchangeOptions | NothingSuitable | AskFirst;

/** A part of the body as people ask for it. */
export type Area = 'chest' | 'back' | 'shoulders' | 'arms' | 'legs' | 'trunk';

/** What fits for a part of the body, and what goes with it. */
export interface AreaOptions {
  readonly kind: 'options';
  readonly area: Area;
  /** Best first, one for each movement. */
  readonly suggestions: readonly Suggestion[];
  readonly leftOut: readonly LeftOut[];
  readonly askAbout: readonly string[];
  readonly notes: readonly ExchangeReason[];
  readonly stop: readonly StopRule[];
}

/** The answer to {@link exercisesFor}. */
export type AreaExchange = AreaOptions | NothingSuitable | AskFirst;

/** The muscle groups of each area. */
export const areaGroups: Readonly<Record<Area, readonly MuscleGroup[]>> = {
  chest: ['chest'],
  back: ['back'],
  shoulders: ['shoulders'],
  arms: ['arms', 'forearms'],
  legs: ['hips', 'thighs', 'lower-legs'],
  trunk: ['trunk'],
};

/** What a word on a clinician's list stands for. */
export interface ClinicianTerm {
  /** Singular, small letters, the ways it is said. */
  readonly says: readonly string[];
  /** All exercises of these movements are meant. */
  readonly movements?: readonly Movement[];
  /** Single exercises are meant as well. */
  readonly ids?: readonly string[];
  /** Of the movements, only those with this position. */
  readonly position?: Exercise['positions'][number];
  /** The loaded positions that such a ban is usually about. */
  readonly about: readonly Exercise['positions'][number][];
}
