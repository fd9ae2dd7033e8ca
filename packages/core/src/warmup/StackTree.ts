import type { Plate, ReachableLoad } from '../equipment/index.ts';
import { loadFromValue } from '../load/index.ts';

/**
 * All stacks of plates as one tree: a node is a stack, its parent the stack without the outermost
 * plate. Changing one stack into another is a walk up to what both share and down again, so the
 * plates moved are a distance in this tree.
 */
export interface StackTree {
  readonly size: number;
  /** A loading's stack from the empty one outwards, as nodes; none for a loading that is not here. */
  readonly pathOf: (way: ReachableLoad | undefined) => readonly number[];
  /** How many equal stacks a loading has: 2 on a bar. */
  readonly sides: number;
}

/** A stack of plates, and those with one more outermost plate, by its kind. */
interface Stack {
  readonly node: number;
  readonly outer: Map<number, Stack>;
}

/**
 * The tree of mirrored loadings of one piece of equipment; `undefined` where loadings are not
 * mirrored stacks of plates.
 */
export function stackTree(ways: readonly ReachableLoad[]): StackTree | undefined {
  const kindOf = plateKinds();
  const empty: Stack = { node: 0, outer: new Map() };
  const paths = new Map<ReachableLoad | undefined, readonly number[]>();
  let size = 1;
  let sides = 0;
  for (const way of ways) {
    const mirrored = mirroredStack(way, kindOf);
    if (mirrored === undefined) return undefined;
    sides = mirrored.sides;
    const path = [empty.node];
    let at = empty;
    for (const kind of mirrored.kinds) {
      const next = at.outer.get(kind) ?? { node: size++, outer: new Map() };
      at.outer.set(kind, next);
      path.push(next.node);
      at = next;
    }
    paths.set(way, path);
  }
  return { size, pathOf: (way) => paths.get(way) ?? [], sides };
}

function mirroredStack({ loading }: ReachableLoad, kindOf: (plate: Plate) => number) {
  if (loading.kind !== 'plates') return undefined;
  const [first, ...others] = loading.stacks.map(({ plates }) => plates.map(kindOf));
  const mirrored = others.every(
    (kinds) => kinds.length === first?.length && kinds.every((kind, at) => kind === first[at]),
  );
  return first && mirrored ? { kinds: first, sides: loading.stacks.length } : undefined;
}

/** Numbers for kinds of plates; a plate object that was seen before is not looked at again. */
function plateKinds(): (plate: Plate) => number {
  const seen = new Map<Plate, number>();
  const named = new Map<string, number>();
  return (plate) => {
    const known = seen.get(plate);
    if (known !== undefined) return known;
    const { weight, thicknessMm, diameterMm } = plate;
    const name = `${loadFromValue(weight)} ${thicknessMm} ${diameterMm}`;
    const kind = named.get(name) ?? named.size;
    named.set(name, kind);
    seen.set(plate, kind);
    return kind;
  };
}
