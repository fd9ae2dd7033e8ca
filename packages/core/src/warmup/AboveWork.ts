import type { RampStep } from './Ramp.ts';

/** Something that has to hold before a load above the work load is planned. */
export interface AboveWorkCondition {
  readonly id: 'experience' | 'load-can-be-stopped' | 'well-short-of-failure' | 'load-exists';
  readonly met: boolean;
  readonly message: string;
}

/**
 * One repetition with a little more than the work load, between the last step and the work. Off
 * unless it is asked for. It claims no bonus: effects found on explosive tasks are small and
 * mixed, and none is known for repetitions to failure.
 */
export type AboveWork =
  | { readonly kind: 'off' }
  | { readonly kind: 'left-out'; readonly conditions: readonly AboveWorkCondition[] }
  | {
      readonly kind: 'included';
      readonly step: RampStep;
      readonly conditions: readonly AboveWorkCondition[];
    };
