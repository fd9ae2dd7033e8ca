import { getAt, isRecord, type Json, setAt, textAt } from '../state/tree.ts';

/** The kept person and the kept gym that a draft came from; each may be missing. */
export type SavedPart = 'client' | 'gym';

const PLACE = 'saved';

/** The id of the kept person or gym that a draft came from; empty where it came from none. */
export function savedId(draft: Json, part: SavedPart): string {
  return textAt(draft, [PLACE, part]);
}

/** The draft as one that came from a kept person or gym, or with `undefined` from none. */
export function withSavedId(draft: Json, part: SavedPart, id: string | undefined): Json {
  const ids = setAt(getAt(draft, [PLACE]) ?? {}, [part], id);
  const isEmpty = isRecord(ids) && Object.keys(ids).length === 0;
  return setAt(draft, [PLACE], isEmpty ? undefined : ids);
}
