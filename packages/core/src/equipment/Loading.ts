import type { Load, LoadValue } from '../load/index.ts';
import type { Plate } from './Equipment.ts';

/** Where a stack of plates is: an end of a bar, a post, a belt, an end of a dumbbell handle. */
export type StackPlace =
  | 'left'
  | 'right'
  | 'post'
  | 'belt'
  | 'first-handle-left'
  | 'first-handle-right'
  | 'second-handle-left'
  | 'second-handle-right';

/** What is on one sleeve or post, innermost first: the last one is the first to come off. */
export interface PlateStack {
  readonly place: StackPlace;
  readonly plates: readonly Plate[];
}

/** Plates on sleeves or posts. Without any plate: the empty bar, or the body alone. */
export interface PlateLoading {
  readonly kind: 'plates';
  readonly stacks: readonly PlateStack[];
  readonly pieces: number;
}

/** One weight from the rack, or a pair of it, each with the same add-ons. */
export interface FixedLoading {
  readonly kind: 'fixed';
  readonly weight: LoadValue;
  readonly hands: 1 | 2;
  readonly addOns: readonly LoadValue[];
  readonly pieces: number;
}

/** The pin in a stack, and the add-ons on top of it. */
export interface PinLoading {
  readonly kind: 'pin';
  /** The stack number: the sum of all plates down to the pin. */
  readonly pin: LoadValue;
  readonly addOns: readonly LoadValue[];
  readonly pieces: number;
}

/** Help from an assistance machine, as the negative load it adds. */
export interface AssistanceLoading {
  readonly kind: 'assistance';
  readonly added: LoadValue;
  readonly pieces: 0;
}

/** How a load is put together. `pieces` counts what the hands carry for it, over all sides. */
export type Loading = PlateLoading | FixedLoading | PinLoading | AssistanceLoading;

/** A load that the equipment can make. */
export interface ReachableLoad {
  /** What has to be moved, as far as it is known; rep curves, targets and steps use this one. */
  readonly load: Load;
  /** The number that is read off or counted up, and that a log keeps: see `counts`. */
  readonly shown: Load;
  /** Lowest and highest over a repetition, where the moved share of the body is a range. */
  readonly range?: { readonly low: Load; readonly high: Load };
  readonly loading: Loading;
}

/**
 * What `shown` counts: bar and all (`total`), the weight in one hand (`each-hand`), the stack
 * number with add-ons (`stack`), the plates alone on a machine (`plates`), what is added to the
 * body, negative for help (`added`).
 */
export type Counts = 'total' | 'each-hand' | 'stack' | 'plates' | 'added';

/**
 * How far `load` can be trusted: `exact`; `estimate` where a pulley, lever, rail or moved share
 * stands between the weight and the person; `relative` where the starting resistance is unknown,
 * so that loads compare only on this one machine.
 */
export type LoadStanding = 'exact' | 'estimate' | 'relative';

/** Something a reader has to know about these numbers. */
export interface EquipmentNote {
  readonly code: string;
  readonly message: string;
}

/** No load, and why. */
export interface NoLoads {
  readonly kind: 'none';
  readonly reason:
    | 'resistance-unknown'
    | 'body-weight-not-given'
    | 'assistance-over-body-weight'
    | 'nothing-in-stock'
    | 'no-pair'
    | 'nothing-in-range'
    | 'too-many-loads';
  readonly message: string;
}

/** All loads, lightest first, never empty. */
export interface LoadList {
  readonly kind: 'loads';
  readonly counts: Counts;
  readonly standing: LoadStanding;
  readonly notes: readonly EquipmentNote[];
  readonly loads: readonly [ReachableLoad, ...ReachableLoad[]];
}

/** What a piece of equipment can make, or why that is nothing. */
export type ReachableLoads = LoadList | NoLoads;
