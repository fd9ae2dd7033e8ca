import type { Counts } from '../equipment/index.ts';
import type { Unit } from '../load/index.ts';
import type { DateOrder } from './cells/readDate.ts';
import type { Separator } from './table/Table.ts';

/** What a column of a log can hold. */
export type LogField =
  | 'date'
  | 'exercise'
  | 'set'
  | 'side'
  | 'load'
  | 'unit'
  | 'counts'
  | 'hands'
  | 'body'
  | 'reps'
  | 'ended'
  | 'reserve'
  | 'effort'
  | 'tempo'
  | 'rest'
  | 'tags'
  | 'equipment'
  | 'note';

/** Which column holds what, by its number from 0 or by its header. */
export type LogColumns = Readonly<Partial<Record<LogField, number | string>>> & {
  readonly date: number | string;
  readonly exercise: number | string;
  readonly load: number | string;
  readonly reps: number | string;
};

/** How to read a table of somebody else's making. */
export interface LogMapping {
  readonly columns: LogColumns;
  /** Found from the rows when left out. */
  readonly separator?: Separator;
  /** Whether the first row names the columns; yes when left out. */
  readonly hasHeader?: boolean;
  /** The unit of a load that says none, in its cell or in a unit column. */
  readonly unit: Unit;
  /** What a load without a sign or a pair counts; `total` when left out. */
  readonly counts?: Counts;
  /** Needed where dates are not written 2026-03-02. */
  readonly dateOrder?: DateOrder;
  /** What two-digit years count from, 2000 for instance; without it they are a problem. */
  readonly shortYearsFrom?: number;
  /** The decimal mark, when it is known: it is trusted even where three digits follow it. */
  readonly decimalMark?: ',' | '.';
  /** Own names of exercises and the ids they stand for. Names that are not here stay as they are. */
  readonly exercises?: Readonly<Record<string, string>>;
}
