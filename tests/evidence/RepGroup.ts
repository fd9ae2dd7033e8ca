import type { EnduranceClass } from '../../packages/core/src/anatomy/index.ts';

/** Mean repetitions to failure of one published group at one share of the one-rep max. */
export interface RepCount {
  readonly share: number;
  readonly reps: number;
  /** Standard deviation between the people of the group, where it was published. */
  readonly sd: number | undefined;
}

/** One published group on one lift, at a pace of its own choice. */
export interface RepGroup {
  readonly dataSet: string;
  readonly group: string;
  readonly people?: number;
  readonly lift: EnduranceClass | 'any';
  /** Why its rows are shown and not counted. */
  readonly aside?: string;
  readonly counts: readonly RepCount[];
}
