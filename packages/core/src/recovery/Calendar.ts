/** Hours of a day in which training can happen, in wall time. */
export interface OpenHours {
  /** `HH:MM`. */
  readonly from: string;
  /** `HH:MM`; `24:00` ends the day, and a time before `from` lies on the next day. */
  readonly to: string;
}

/** What one day offers. */
export interface DayHours {
  /** Empty when there is no time to train. */
  readonly open: readonly OpenHours[];
  /** What kind of day it is, for rules: `night-shift`. */
  readonly kind?: string;
  /** Where training happens that day; sessions may ask for certain gyms. */
  readonly gym?: string;
}

/** Hours that repeat: seven days for a week, any other number for a shift rota. */
export interface Rota {
  /** Date of the first of `days`, `YYYY-MM-DD`; the cycle runs on in both directions. */
  readonly firstDay: string;
  readonly days: readonly DayHours[];
}

/** Dates with other hours than the rota says: a trip, a holiday, a swapped shift. */
export interface OtherHours {
  /** First and last date, both included. */
  readonly from: string;
  readonly to: string;
  readonly hours: DayHours;
}

/** What holds for training on days of one kind. */
export interface DayRule {
  readonly kind: string;
  /** Sessions on such days are done in their light form. */
  readonly light?: boolean;
  /** No session on such a day when the day before, of the same kind, had one. */
  readonly noneOnTheNextDay?: boolean;
  /** Most sessions in an unbroken run of such days. */
  readonly mostInARow?: number;
}

/** One session of the rotation. */
export interface RotaSession {
  readonly id: string;
  readonly name: string;
  /** From start to end, at least 1. */
  readonly minutes: number;
  /**
   * The muscles it trains, each with the elapsed hours from its start until that muscle may be
   * trained again: from `muscleHours`, or a fixed rule such as 48 for each.
   */
  readonly muscles: Readonly<Record<string, number>>;
  /** Its light form; the same session when left out. */
  readonly light?: {
    readonly minutes: number;
    readonly muscles: Readonly<Record<string, number>>;
  };
  /** Gyms it can be done in; anywhere when left out. */
  readonly gyms?: readonly string[];
}

/** A session at a wall time in the calendar's zone. */
export interface TimedSession {
  /** Id of a session of the rotation. */
  readonly session: string;
  /** `YYYY-MM-DDTHH:MM`. */
  readonly start: string;
  /** Whether it was or is the light form. */
  readonly light?: boolean;
}

/** First and last date, both included. */
export interface DateRange {
  readonly from: string;
  readonly to: string;
}

/** What to place, and into which hours. */
export interface CalendarRequest {
  /** Name from the time-zone database, `Europe/Berlin`. */
  readonly zone: string;
  /** First date of the plan, and the number of days, 1 to 366. */
  readonly firstDay: string;
  readonly days: number;
  readonly rota: Rota;
  /** Later entries win where they overlap. */
  readonly otherHours?: readonly OtherHours[];
  /** The rotation, 1 to 8 sessions. Each comes once in every round. */
  readonly sessions: readonly RotaSession[];
  /** `as-listed` unless the sessions of a round may come in any order. */
  readonly order?: 'as-listed' | 'any-in-round';
  /** Most sessions from Monday to Sunday, spread evenly; as often as the muscles allow without it. */
  readonly perWeek?: number;
  readonly rules?: readonly DayRule[];
  /** Dates on which every session is done in its light form. */
  readonly lightDates?: readonly DateRange[];
  /** Sessions already done, in any order; what was missed is left out and so comes next. */
  readonly done?: readonly TimedSession[];
  /** Muscles that other work keeps busy, each with the moment it is ready: `2026-03-30T16:00:00Z`. */
  readonly notReadyBefore?: Readonly<Record<string, string>>;
  /** Sessions that stay where they are. */
  readonly fixed?: readonly TimedSession[];
  /** An earlier plan: of equally many sessions, as many of these as possible stay where they were. */
  readonly keep?: readonly TimedSession[];
  /**
   * How many ways of placing equally many sessions are compared, from 1; all when left out. Fewer
   * bound the time where many are alike. The number of sessions is the largest either way; what is
   * kept of an earlier plan, even spacing and early starts may then not be the best there is.
   */
  readonly mostWays?: number;
  /** Possible starts lie this far apart, from the opening on; 30 when left out. */
  readonly startEveryMinutes?: number;
}

/** How long a muscle had since it was last trained, and how long it asked for. */
export interface MuscleGap {
  readonly muscle: string;
  /** Elapsed, from start to start. */
  readonly hours: number;
  readonly hoursNeeded: number;
  /** When it was last trained: wall time. */
  readonly lastTrained: string;
}

/** A session that has its place. */
export interface PlacedSession extends TimedSession {
  /** Counted on from the sessions done: 1 for the first ever. It stays when the session moves. */
  readonly number: number;
  readonly name: string;
  readonly end: string;
  /** The same moments in world time. */
  readonly startsAt: string;
  readonly endsAt: string;
  /** The day it belongs to: the one it starts on. */
  readonly date: string;
  readonly light: boolean;
  readonly gym?: string;
  readonly dayKind?: string;
  /** Muscles trained before within the plan or the sessions done, the shortest margin first. */
  readonly gaps: readonly MuscleGap[];
}
