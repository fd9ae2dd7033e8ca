import type { Problem } from '@windlass/core/basis';
import { readGym, readSessionFile } from '@windlass/core/schema';
import { getAt, isRecord, type Json, setAt } from './tree.ts';

/** What a file that somebody opens turns out to be. */
export type OpenedFile =
  | {
      readonly kind: 'opened';
      readonly draft: Json;
      readonly holds: 'plan' | 'gym';
      /** Parts that the file only names; those of the page were kept. */
      readonly kept: readonly string[];
    }
  | { readonly kind: 'not-json' }
  | { readonly kind: 'wrong'; readonly problems: readonly Problem[] };

/**
 * The draft after a plan file or a gym file was opened. A plan file may name its gym or its client
 * as another file instead of holding it: what the page has then stays. A file with a mistake
 * changes nothing and is answered with what would be right.
 */
export function openFile(text: string, draft: Json): OpenedFile {
  const file = parse(text);
  if (file === undefined) return { kind: 'not-json' };
  if (isRecord(file) && file.equipment !== undefined) {
    const gym = readGym(file);
    if (!gym.ok) return { kind: 'wrong', problems: gym.problems };
    return { kind: 'opened', draft: setAt(draft, ['gym'], file), holds: 'gym', kept: [] };
  }
  const kept = isRecord(file)
    ? Object.keys(file).filter((part) => typeof file[part] === 'string')
    : [];
  const whole = kept.reduce((tree, part) => setAt(tree, [part], getAt(draft, [part])), file);
  const plan = readSessionFile(whole);
  if (!plan.ok) return { kind: 'wrong', problems: plan.problems };
  return { kind: 'opened', draft: whole, holds: 'plan', kept };
}

function parse(text: string): Json | undefined {
  try {
    return JSON.parse(text.replace(/^\uFEFF/u, ''));
  } catch {
    return undefined;
  }
}
