import type { Outcome } from '@windlass/core/basis';
import { readSessionFile } from '@windlass/core/schema';
import type { SessionQuestion } from '@windlass/core/session';
import { fileOf } from './fileOf.ts';
import type { Json } from './tree.ts';

/** What a draft asks to be planned, or what is wrong with it. */
export function readDraft(draft: Json): Outcome<SessionQuestion> {
  return readSessionFile(fileOf(draft));
}
