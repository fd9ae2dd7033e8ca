import type { RepTiming } from './Tempo.ts';

/** How a set is timed. */
export interface SetTiming extends RepTiming {
  /**
   * Whether the pause that ends the last repetition belongs to the set: the pause after lifting,
   * or the pause after lowering where repetitions start with the lift. Both readings are in use,
   * so there is no default.
   */
  readonly lastPause: 'counted' | 'left-out';
}
