import type { Plate } from './Equipment.ts';
import { MOST_LOADS } from './noLoads.ts';

/** Plates of one kind on hand, by the piece. */
export interface PieceKind {
  readonly plate: Plate;
  readonly weight: number;
  readonly pieces: number;
  readonly room: number;
}

/** A way to load two ends. The first end is the heavier one, or they weigh the same. */
export interface UnevenWay {
  readonly mass: number;
  /** First end less second end, 0 or more. */
  readonly tilt: number;
  readonly pieces: number;
  readonly rooms: readonly [number, number];
  /** The kind added last; absent on the empty bar. */
  readonly last?: Added;
}

interface Added {
  readonly plate: Plate;
  /** Pieces on the first and on the second end. */
  readonly pieces: readonly [number, number];
  /** Whether the ends changed places afterwards. */
  readonly turned: boolean;
  readonly before: UnevenWay;
}

/**
 * All totals that pieces can make on two ends whose weights differ by at most `mostTilt`: dynamic
 * programming over the kinds from heavy to light. A state is the total and the tilt; one is
 * dropped as soon as the lighter pieces still to come could not bring the ends near enough. For
 * each state the ways that no other beats in pieces and in room on both ends are kept.
 *
 * @param kinds heaviest first.
 * @returns `undefined` when more than {@link MOST_LOADS} would have to be kept.
 */
export function unevenWays(
  kinds: readonly PieceKind[],
  mostTilt: number,
  roomLimit: number,
): readonly UnevenWay[] | undefined {
  let lighter = kinds.reduce((sum, { weight, pieces }) => sum + weight * pieces, 0);
  let ways: readonly UnevenWay[] = [{ mass: 0, tilt: 0, pieces: 0, rooms: [0, 0] }];
  for (const kind of kinds) {
    lighter -= kind.weight * kind.pieces;
    const states = new Map<string, UnevenWay[]>();
    let kept = 0;
    for (const before of ways) {
      for (const way of grow(before, kind)) {
        if (way.tilt > mostTilt + lighter || Math.max(...way.rooms) > roomLimit) continue;
        const key = `${way.mass} ${way.tilt}`;
        const known = states.get(key) ?? [];
        if (known.some((other) => atLeastAsGood(other, way))) continue;
        const rest = known.filter((other) => !atLeastAsGood(way, other));
        kept += rest.length + 1 - known.length;
        states.set(key, [...rest, way]);
      }
      if (kept > MOST_LOADS) return undefined;
    }
    ways = [...states.values()].flat();
  }
  return ways;
}

function* grow(before: UnevenWay, kind: PieceKind): Generator<UnevenWay> {
  const { plate, weight, pieces, room } = kind;
  for (let first = 0; first <= pieces; first += 1) {
    for (let second = 0; first + second <= pieces; second += 1) {
      const tilt = before.tilt + (first - second) * weight;
      const turned = tilt < 0;
      const rooms = [before.rooms[0] + first * room, before.rooms[1] + second * room] as const;
      yield {
        mass: before.mass + (first + second) * weight,
        tilt: Math.abs(tilt),
        pieces: before.pieces + first + second,
        rooms: turned ? [rooms[1], rooms[0]] : rooms,
        last: { plate, pieces: [first, second], turned, before },
      };
    }
  }
}

function atLeastAsGood(a: UnevenWay, b: UnevenWay): boolean {
  return a.pieces <= b.pieces && a.rooms[0] <= b.rooms[0] && a.rooms[1] <= b.rooms[1];
}
