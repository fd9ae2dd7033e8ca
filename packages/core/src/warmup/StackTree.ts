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

/** The tree of mirrored loadings; `undefined` where loadings are not mirrored stacks of plates. */
export function stackTree(ways: readonly ReachableLoad[]): StackTree | undefined {
  const kindOf = plateKinds();
  const children: Map<number, number>[] = [new Map()];
  const paths = new Map<ReachableLoad | undefined, readonly number[]>();
  let sides: number | undefined;
  for (const way of ways) {
    const stack = mirroredStack(way, kindOf);
    if (stack === undefined || (sides !== undefined && sides !== stack.sides)) return undefined;
    sides = stack.sides;
    let at = 0;
    const path = [at];
    for (const kind of stack.kinds) {
      const known = children[at]?.get(kind);
      const node = known ?? children.push(new Map()) - 1;
      if (known === undefined) children[at]?.set(kind, node);
      path.push(node);
      at = node;
    }
    paths.set(way, path);
  }
  return { size: children.length, pathOf: (way) => paths.get(way) ?? [], sides: sides ?? 0 };
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
