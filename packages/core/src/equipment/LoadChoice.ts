import type { Load } from '../load/index.ts';
import type { NoLoads, ReachableLoad } from './Loading.ts';

/** Why a load is not the one that was asked for. */
export type NearReason =
  | 'between-two-loads'
  | 'lightest-is-heavier'
  | 'heaviest-is-lighter'
  | 'nothing-to-add';

/** A load for a wish: exactly that one, one near it, or none, with the reason. */
export type LoadChoice =
  | { readonly kind: 'exact'; readonly chosen: ReachableLoad }
  | {
      readonly kind: 'near';
      readonly chosen: ReachableLoad;
      /** Chosen load less the one that was asked for. */
      readonly difference: Load;
      readonly reason: NearReason;
      readonly message: string;
    }
  | NoChoice;

/** No load for this wish, or none at all. */
export interface NoChoice {
  readonly kind: 'none';
  readonly reason: Exclude<NearReason, 'between-two-loads'> | NoLoads['reason'];
  readonly message: string;
}

/** The neighbour of a load, or why there is none. */
export type NextLoad = { readonly kind: 'next'; readonly chosen: ReachableLoad } | NoChoice;
