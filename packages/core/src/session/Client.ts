import type { LoadValue } from '../load/index.ts';
import type { KnownSet } from '../progress/index.ts';
import type { RecoveryReports } from '../recovery/RecoveryReports.ts';
import type { ClientHealth } from '../safety/index.ts';

/** A set that is known of a client; `setsFromLog` takes them from a log. */
export type ClientSet = KnownSet;

/** The person a session is planned for. */
export interface Client {
  readonly name: string;
  /** `experienced`: at least a year of regular training; `new`: less than two months. */
  readonly experience: 'new' | 'some' | 'experienced';
  readonly bodyWeight?: LoadValue;
  readonly health: ClientHealth;
  /** Nobody who can help with a load is there. */
  readonly alone: boolean;
  /** Soreness and short nights since the last session: they lengthen the time to the next one. */
  readonly reports?: RecoveryReports;
  readonly sets: readonly ClientSet[];
}
