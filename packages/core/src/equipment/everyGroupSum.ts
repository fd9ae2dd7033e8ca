import type { GroupKind } from './groupSums.ts';

export interface SumRange {
  readonly leastMass: number;
  readonly mostMass: number;
  readonly mostRoom: number;
  readonly mostGroups: number;
}

/** One way to make one sum: groups of each kind. */
export interface GroupSum {
  readonly mass: number;
  readonly groups: number;
  readonly room: number;
  readonly counts: readonly number[];
}

/**
 * Every way to make every sum in a range, by depth-first search that turns back when the range is
 * passed or can no longer be reached.
 *
 * @param kinds heaviest first.
 * @param mostWays `undefined` is returned when there are more.
 */
export function everyGroupSum(
  kinds: readonly GroupKind[],
  range: SumRange,
  mostWays: number,
): readonly GroupSum[] | undefined {
  const massFrom = kinds.map((_, index) =>
    kinds.slice(index).reduce((sum, { mass, groups }) => sum + mass * groups, 0),
  );
  const found: GroupSum[] = [];
  const visit = (index: number, way: GroupSum): boolean => {
    if (way.mass > range.mostMass || way.room > range.mostRoom) return true;
    if (way.groups > range.mostGroups) return true;
    if (way.mass + (massFrom[index] ?? 0) < range.leastMass) return true;
    const kind = kinds[index];
    if (kind === undefined) return found.push(way) <= mostWays;
    for (let count = 0; count <= kind.groups; count += 1) {
      const next = {
        mass: way.mass + count * kind.mass,
        groups: way.groups + count,
        room: way.room + count * kind.room,
        counts: [...way.counts, count],
      };
      if (!visit(index + 1, next)) return false;
    }
    return true;
  };
  return visit(0, { mass: 0, groups: 0, room: 0, counts: [] }) ? found : undefined;
}
