import { cell, emptyWays, type Ways } from './Ways.ts';

/** What one group of a kind adds. */
export interface GroupSize {
  /** In steps, more than 0. */
  readonly mass: number;
  /** Along each sleeve, in whole micrometres. */
  readonly room: number;
}

export interface WayLimits {
  readonly mass: number;
  readonly room: number;
  /** Stop when more ways than this would be kept. */
  readonly ways: number;
  /** Keep ways that need more groups but less room beside the best one. */
  readonly front: boolean;
}

/**
 * The ways of `start` (none of the kind) merged with those of `grown` and one group more.
 * Of equal ways the one with more of the kind stays, which is the heaviest so far.
 */
export function mergeWays(start: Ways, grown: Ways, kind: GroupSize, limits: WayLimits): Ways {
  const merged = emptyWays(Math.min(start.size + grown.size, limits.ways + 1));
  let [i, j] = [0, 0];
  let lastMass = -1;
  let leastRoom = 0;
  while (merged.size <= limits.ways) {
    while (j < grown.size && !fits(grown, j, kind, limits)) j += 1;
    if (i === start.size && j === grown.size) break;
    const fromStart =
      j === grown.size || (i < start.size && startIsFirst(start, i, grown, j, kind));
    const [from, row, extra] = fromStart ? [start, i, 0] : [grown, j, 1];
    const mass = cell(from.mass, row) + extra * kind.mass;
    const room = cell(from.room, row) + extra * kind.room;
    if (mass !== lastMass || (limits.front && room < leastRoom)) {
      const to = merged.size;
      merged.mass[to] = mass;
      merged.room[to] = room;
      merged.groups[to] = cell(from.groups, row) + extra;
      merged.count[to] = cell(from.count, row) + extra;
      merged.before[to] = cell(from.before, row);
      merged.size += 1;
      lastMass = mass;
      leastRoom = room;
    }
    if (fromStart) i += 1;
    else j += 1;
  }
  return merged;
}

function fits(ways: Ways, row: number, kind: GroupSize, limits: WayLimits): boolean {
  return (
    cell(ways.mass, row) + kind.mass <= limits.mass &&
    cell(ways.room, row) + kind.room <= limits.room
  );
}

function startIsFirst(start: Ways, i: number, grown: Ways, j: number, kind: GroupSize): boolean {
  const order =
    cell(start.mass, i) - (cell(grown.mass, j) + kind.mass) ||
    cell(start.groups, i) - (cell(grown.groups, j) + 1) ||
    cell(start.room, i) - (cell(grown.room, j) + kind.room);
  return order < 0;
}
