import { fileOf } from '../state/fileOf.ts';
import { isRecord, type Json, listAt } from '../state/tree.ts';

/** Whether two people or two gyms are the same; the order of a person's known sets does not count. */
export function sameParts(a: Json, b: Json): boolean {
  return plain(a) === plain(b);
}

function plain(part: Json): string {
  const file = fileOf(part);
  if (!isRecord(file) || file.sets === undefined) return JSON.stringify(file);
  const sets = listAt(file, ['sets']).map((set) => JSON.stringify(set));
  return JSON.stringify({ ...file, sets: sets.sort() });
}
