import type { GroupKind } from './groupSums.ts';

/** One choice of so many groups of each kind. */
export interface Choice {
  readonly mass: number;
  readonly groups: number;
  readonly room: number;
  readonly counts: readonly number[];
}

/** Every choice of counts there is, one by one, the last kind's count changing first. */
export function everyChoice(kinds: readonly GroupKind[]): readonly Choice[] {
  let all: readonly Choice[] = [{ mass: 0, groups: 0, room: 0, counts: [] }];
  for (const { mass, room, groups } of kinds) {
    all = all.flatMap((sum) =>
      Array.from({ length: groups + 1 }, (_, count) => ({
        mass: sum.mass + count * mass,
        groups: sum.groups + count,
        room: sum.room + count * room,
        counts: [...sum.counts, count],
      })),
    );
  }
  return all;
}
