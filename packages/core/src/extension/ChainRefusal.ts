import type { Source } from '../basis/index.ts';
import type { Stage } from './Stage.ts';

/** Why a chain, or one stage of it, is not offered. */
export interface ChainRefusal {
  /** Stable: `extension.hold-not-here`. */
  readonly code: string;
  /** Which stage, counted from 0; null when the whole chain is meant. */
  readonly stage: number | null;
  readonly why: string;
  /** What to do instead. */
  readonly instead: string;
  readonly sources: readonly Source[];
}

/** What comes nearest to a refused chain. */
export type NearestChain =
  | { readonly kind: 'chain'; readonly stages: readonly Stage[] }
  /** No lifting to failure here: stop with so many repetitions left. */
  | { readonly kind: 'stop-short'; readonly repsInReserve: number; readonly why: string }
  /** No plan before somebody was asked. */
  | { readonly kind: 'none'; readonly why: string };
