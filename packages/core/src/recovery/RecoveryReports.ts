import type { MuscleId } from '../anatomy/index.ts';
import type { Source } from '../basis/index.ts';

/** `clear`: felt when moving. `severe`: it hinders everyday movement. */
export type Soreness = 'none' | 'slight' | 'clear' | 'severe';

/** What a person says about the days since the last session. A field left out was not asked. */
export interface RecoveryReports {
  readonly soreness?: Readonly<Partial<Record<MuscleId, Soreness>>>;
  /** Nights of 6 hours of sleep or less since the last session. */
  readonly shortNights?: number;
}

/** What one report does to the hours until a muscle is ready. */
export interface RecoveryEffect {
  readonly report: 'soreness' | 'short-nights' | 'earlier-sessions';
  /** The hours are multiplied by this. */
  readonly factor: number;
  /** A sentence to show. */
  readonly says: string;
  /** What the effect rests on, and what was chosen. */
  readonly sources: readonly Source[];
}
