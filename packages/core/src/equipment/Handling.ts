import type { Load, LoadValue } from '../load/index.ts';
import type { Plate } from './Equipment.ts';
import type { StackPlace } from './Loading.ts';

/** One movement of the hands. */
export type HandlingStep =
  | {
      readonly action: 'take-off' | 'put-on';
      readonly place: StackPlace;
      readonly plate: Plate;
      /** By how much the two ends of this bar differ afterwards; 0 on a single post. */
      readonly sideDifference: Load;
    }
  | { readonly action: 'put-back' | 'pick-up'; readonly weight: LoadValue }
  | { readonly action: 'remove-add-on' | 'fit-add-on'; readonly weight: LoadValue }
  | { readonly action: 'move-pin'; readonly to: LoadValue }
  | { readonly action: 'set-assistance'; readonly added: LoadValue };

/** How to get from one loading to another. */
export interface Handling {
  /** In the order to do them. */
  readonly steps: readonly HandlingStep[];
  /** Pieces moved: the number of steps. */
  readonly pieces: number;
  /** The largest difference between the ends of a bar on the way. */
  readonly mostSideDifference: Load;
}
