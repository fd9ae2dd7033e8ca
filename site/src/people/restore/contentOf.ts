import type { SavedKind, SavedRecords } from '@windlass/core/schema';

const marks: ReadonlySet<string> = new Set(['revision', 'past', 'changedAt']);

/**
 * What a record holds as text, without the marks of when it was changed. The order in which fields
 * were written makes no difference.
 */
export function contentOf(record: SavedRecords[SavedKind]): string {
  return sorted(Object.fromEntries(Object.entries(record).filter(([name]) => !marks.has(name))));
}

/** Names of the parts of two records that differ: of a person or a gym those inside it. */
export function differingParts(
  here: SavedRecords[SavedKind],
  file: SavedRecords[SavedKind],
): readonly string[] {
  const [a, b] = [partsOf(here), partsOf(file)];
  const names = new Set([...Object.keys(a), ...Object.keys(b)]);
  return [...names].filter((name) => sorted(a[name] ?? null) !== sorted(b[name] ?? null));
}

function partsOf(record: SavedRecords[SavedKind]): Readonly<Record<string, unknown>> {
  const own = Object.entries(record).filter(([name]) => !marks.has(name));
  return Object.fromEntries(
    own.flatMap(([name, value]) =>
      name === 'client' || name === 'gym' ? Object.entries(value as object) : [[name, value]],
    ),
  );
}

function sorted(tree: unknown): string {
  return JSON.stringify(tree, (_, value: unknown) =>
    typeof value === 'object' && value !== null && !Array.isArray(value)
      ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)))
      : value,
  );
}
