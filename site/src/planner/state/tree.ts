/** Anything that a JSON file can hold. */
export type Json =
  | string
  | number
  | boolean
  | null
  | readonly Json[]
  | { readonly [key: string]: Json };

/** Where something stands in a tree, outermost first. */
export type Path = readonly (string | number)[];

/** What stands at a place, or nothing. */
export function getAt(tree: Json | undefined, [step, ...rest]: Path): Json | undefined {
  if (step === undefined) return tree;
  if (isList(tree)) return typeof step === 'number' ? getAt(tree[step], rest) : undefined;
  return isRecord(tree) && Object.hasOwn(tree, step) ? getAt(tree[step], rest) : undefined;
}

/** The list at a place; empty where there is none, so that a damaged tree can still be shown. */
export function listAt(tree: Json, path: Path): readonly Json[] {
  const value = getAt(tree, path);
  return isList(value) ? value : [];
}

/** The text at a place as a field shows it; empty where there is none. */
export function textAt(tree: Json, path: Path): string {
  const value = getAt(tree, path);
  if (typeof value === 'string') return value;
  if (typeof value === 'number') return String(value);
  if (!isRecord(value)) return '';
  if (typeof value.code === 'string') return value.code;
  return typeof value.value === 'number' ? `${value.value} ${textAt(value, ['unit'])}` : '';
}

/**
 * The tree with another value at a place. `undefined` takes the field away, or the item out of its
 * list. Everything beside the way to that place stays the same object.
 */
export function setAt(tree: Json | undefined, path: Path, value: Json | undefined): Json {
  const [step, ...rest] = path;
  if (step === undefined) return value ?? null;
  const isRemoval = rest.length === 0 && value === undefined;
  if (typeof step === 'number') {
    const list = isList(tree) ? tree : [];
    if (isRemoval) return list.toSpliced(step, 1);
    return list.toSpliced(step, 1, setAt(list[step], rest, value));
  }
  const record = isRecord(tree) ? tree : {};
  if (!isRemoval) return { ...record, [step]: setAt(getAt(record, [step]), rest, value) };
  const { [step]: _, ...others } = record;
  return others;
}

export function isList(value: Json | undefined): value is readonly Json[] {
  return Array.isArray(value);
}

export function isRecord(value: Json | undefined): value is { readonly [key: string]: Json } {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
