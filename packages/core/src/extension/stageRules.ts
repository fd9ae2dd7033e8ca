import type { StageKind } from './Stage.ts';

/** Where in a set one kind of stage may come. */
export interface StageRule {
  /** As coaches say it. */
  readonly name: string;
  /** What it may come right after. Only lifting opens a set. */
  readonly after: readonly StageKind[];
  /** Why not after the others; a sentence that stands alone. */
  readonly why: string;
  /** How often it may come in one chain. */
  readonly times: number;
}

const lifting: readonly StageKind[] = ['lift', 'lighter', 'pause'];

/**
 * The order of stages. Lifting is the weakest thing a muscle does, holding is stronger, lowering
 * strongest, so the same load can pass from one to the next and never back. How often each may
 * come is a convention of this project.
 */
export const stageRules: Readonly<Record<StageKind, StageRule>> = {
  lift: {
    name: 'lifting to failure',
    after: [],
    why: 'Lifting opens the set; later it can only go on with a lighter load, after a pause or with help.',
    times: 1,
  },
  lighter: {
    name: 'a lighter load without rest',
    after: [...lifting, 'part-range', 'assisted', 'hold'],
    why: 'After lowering to the end the load is no longer under control, so nothing is lifted any more.',
    times: 3,
  },
  pause: {
    name: 'a short pause, then lifting on',
    after: [...lifting, 'part-range', 'assisted'],
    why: 'A pause brings back lifting strength; after a hold or lowerings the set goes down in strength and is finished.',
    times: 4,
  },
  assisted: {
    name: 'repetitions with help',
    after: lifting,
    why: 'Help completes a lift that just failed; after other stages the partner would carry most of the load.',
    times: 1,
  },
  'part-range': {
    name: 'part-range repetitions at long length',
    after: [...lifting, 'assisted'],
    why: 'Part-range repetitions are still lifting; a load that can no longer be held or lowered cannot be lifted part of the way.',
    times: 1,
  },
  hold: {
    name: 'a hold',
    after: [...lifting, 'assisted', 'part-range'],
    why: 'A muscle can lower more than it can hold, so a hold comes before lowering; one hold ends what can be held.',
    times: 1,
  },
  lower: {
    name: 'slow lowering',
    after: [...lifting, 'assisted', 'part-range', 'hold'],
    why: 'Lowering ends when the load is no longer under control; that is the end of the set.',
    times: 1,
  },
};
