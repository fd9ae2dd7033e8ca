import { strangers, treacherousNames } from './nasty.ts';
import type { Random } from './Random.ts';
import { anyText, damaged, dateText, loadText, numberText, tempoText } from './texts.ts';

type Tree = Readonly<Record<string, unknown>>;

/** A tree of objects and lists with a few places lost, doubled, replaced or added. */
export function damagedTree(tree: unknown, random: Random): unknown {
  let result = tree;
  for (let times = 1 + random.below(3); times > 0; times -= 1) result = changed(result, random);
  return result;
}

/** The same as a file that holds it. */
export function damagedJson(tree: unknown, random: Random): string {
  const written = (_: string, value: unknown) =>
    typeof value === 'bigint' ? Number(value) : value;
  return JSON.stringify(damagedTree(tree, random), written) ?? '';
}

/** One change somewhere; each step goes down or stops. */
function changed(tree: unknown, random: Random): unknown {
  if (Array.isArray(tree) && tree.length > 0 && !random.oneIn(6)) {
    const at = random.below(tree.length);
    if (random.oneIn(5)) return tree.toSpliced(at, 1, ...random.pick([[], [tree[at], tree[at]]]));
    return tree.with(at, changed(tree[at], random));
  }
  if (isTree(tree) && Object.keys(tree).length > 0 && !random.oneIn(8)) {
    const name = random.pick(Object.keys(tree));
    if (random.oneIn(10)) return without(tree, name);
    if (random.oneIn(20)) return withOwn(tree, random.pick(treacherousNames), anyLeaf(random));
    return withOwn(tree, name, changed(tree[name], random));
  }
  return leafLike(tree, random);
}

function leafLike(leaf: unknown, random: Random): unknown {
  if (random.oneIn(4)) return anyLeaf(random);
  if (typeof leaf === 'number') {
    return random.pick([leaf + 1, leaf - 1, -leaf, leaf / 3, leaf * 1e6, String(leaf)]);
  }
  if (typeof leaf === 'string') return damaged(leaf, random);
  if (typeof leaf === 'boolean') return !leaf;
  return anyLeaf(random);
}

function anyLeaf(random: Random): unknown {
  return random.pick([
    () => anyText(random),
    () => loadText(random),
    () => tempoText(random),
    () => dateText(random),
    () => numberText(random),
    () => random.below(300) - 20,
    () => random.pick(strangers),
    () => [],
    () => ({}),
    () => withOwn({}, random.pick(treacherousNames), { polluted: true }),
    () => deep(random.below(3) === 0 ? 2000 : 20),
  ])();
}

function deep(levels: number): unknown {
  let tree: unknown = [];
  for (let level = 0; level < levels; level += 1) tree = level % 2 === 0 ? [tree] : { a: tree };
  return tree;
}

/** A property of its own, also where its name would set the prototype. */
function withOwn(tree: Tree, name: string, value: unknown): Tree {
  const copy = { ...tree };
  Object.defineProperty(copy, name, {
    value,
    enumerable: true,
    configurable: true,
    writable: true,
  });
  return copy;
}

function without(tree: Tree, name: string): Tree {
  return Object.fromEntries(Object.entries(tree).filter(([other]) => other !== name));
}

function isTree(value: unknown): value is Tree {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
