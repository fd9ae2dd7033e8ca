import type { LoadValue } from '../load/index.ts';
import type { RecoveryReports } from '../recovery/RecoveryReports.ts';
import type { ClientHealth } from '../safety/index.ts';
import type { SetEnd } from '../strength/index.ts';
import type { Tempo } from '../tempo/index.ts';

/** A set as a log keeps it. */
export interface ClientSet {
  /** The day it was done, `YYYY-MM-DD`. */
  readonly date: string;
  /** Id of the exercise. */
  readonly exercise: string;
  /** Id of the equipment in the gym: numbers of two machines never compare. */
  readonly equipment: string;
  /** The number that is read off or counted up there: total of a bar, one hand, stack, plates, added weight. */
  readonly load: LoadValue;
  readonly reps: number;
  readonly end: SetEnd;
  /** Left out when nobody knows. */
  readonly tempo?: Tempo;
  /** Needed where the person is the load. */
  readonly bodyWeight?: LoadValue;
}

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
