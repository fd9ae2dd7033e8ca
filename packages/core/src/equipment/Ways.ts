/**
 * Ways to load, as parallel arrays: one row a way, sorted by mass, then groups, then room.
 * `count` is the groups of the kind added last, `before` the row before that kind was added.
 */
export interface Ways {
  size: number;
  readonly mass: Float64Array;
  readonly groups: Int32Array;
  readonly room: Float64Array;
  readonly count: Int32Array;
  readonly before: Int32Array;
}

/** Room for so many ways, with none in it yet. */
export function emptyWays(capacity: number): Ways {
  return {
    size: 0,
    mass: new Float64Array(capacity),
    groups: new Int32Array(capacity),
    room: new Float64Array(capacity),
    count: new Int32Array(capacity),
    before: new Int32Array(capacity),
  };
}

/** The one way to load nothing. */
export function nothingLoaded(): Ways {
  return { ...emptyWays(1), size: 1 };
}

/** The same ways as the start of a new kind: none of it used yet. */
export function beforeKind(ways: Ways): Ways {
  return {
    ...ways,
    count: new Int32Array(ways.size),
    before: Int32Array.from({ length: ways.size }, (_, row) => row),
  };
}

/** A cell of a column; rows outside are a mistake of the caller and read as 0. */
export function cell(column: Float64Array | Int32Array, row: number): number {
  return column[row] ?? 0;
}
