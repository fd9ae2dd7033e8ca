import { getAt, isList, isRecord, type Json, type Path, textAt } from '../state/tree.ts';
import { words } from './words.ts';

/** What was answered at a place, in a few words: a list, a choice by its name, or a plain value. */
export function healthAnswer(
  draft: Json,
  path: Path,
  choices: Readonly<Record<string, string>>,
): string {
  const value = getAt(draft, path);
  const nameOf = (id: string) => choices[id] ?? id;
  if (value === undefined) return words.health.notAsked;
  if (!isList(value)) return nameOf(textAt(draft, path));
  const names = value.map((item) => nameOf(isRecord(item) ? textAt(item, ['kind']) : String(item)));
  return names.length === 0 ? words.health.none : names.join(', ');
}
