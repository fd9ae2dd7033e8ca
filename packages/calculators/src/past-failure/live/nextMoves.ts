import {
  advanceLiveSet,
  type LiveSet,
  type LiveSetEvent,
  type LiveStanding,
  liveStanding,
  type Stage,
} from '@windlass/core/extension';

type Kind = LiveSetEvent['kind'];

/** One thing that can be said of the set itself, in the order in which it comes. */
export interface NextMove {
  readonly kind: Exclude<Kind, 'stopped' | 'sign'>;
  /** The stage that it begins or goes on with. */
  readonly stage: Stage;
}

/** What can be said next about the set, the planned one first; ends by choice and signs are always apart. */
export function nextMoves(set: LiveSet, standing: LiveStanding): readonly NextMove[] {
  return standing.next
    .flatMap((kind) => (kind === 'stopped' || kind === 'sign' ? [] : [kind]))
    .map((kind) => ({ kind, place: placeAfter(set, kind, standing.lastAt) }))
    .toSorted((a, b) => a.place - b.place)
    .map(({ kind, place }) => ({ kind, stage: set.plan.stages[place] ?? { kind: 'lift' } }));
}

function placeAfter(set: LiveSet, kind: NextMove['kind'], atSeconds: number): number {
  return liveStanding(advanceLiveSet(set, { kind, atSeconds }).set).stage;
}
