import type { Outcome } from '@windlass/core/basis';
import { rememberLifts } from '@windlass/core/session';
import { type Planned, planFrom } from './planFrom.ts';
import { readDraft } from './readDraft.ts';
import type { Json } from './tree.ts';

/** Lifts that a change leaves alone are not worked out again. */
const planOne = rememberLifts();

/** The plan of a draft, or what is wrong with it. */
export function planDraft(draft: Json): Outcome<Planned> {
  const read = readDraft(draft);
  return read.ok ? { ok: true, value: planFrom(draft, read.value, planOne) } : read;
}
