import type { Source } from '../basis/index.ts';

/** Who can answer when the library does not. */
export type Adviser =
  | 'emergency-services'
  | 'physician'
  | 'physiotherapist'
  | 'obstetric-care'
  | 'qualified-adult'
  | 'coach';

/**
 * Something a plan has to say about a person or a set-up.
 *
 * `note`: worth knowing. `caution`: something is limited or done differently. `stop`: no plan
 * before the person named in `ask` has agreed. A caution flags and defers; it never judges health.
 */
export interface Caution {
  /** Stable: `blood-pressure-treated`. */
  readonly id: string;
  readonly level: 'note' | 'caution' | 'stop';
  readonly what: string;
  readonly why: string;
  readonly instead: string;
  /** Nearest first; empty when nobody need be asked. */
  readonly ask: readonly Adviser[];
  readonly sources: readonly Source[];
}
