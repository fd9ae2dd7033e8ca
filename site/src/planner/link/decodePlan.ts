import { type ExampleId, isExample } from '../state/examples.ts';
import { isRecord, type Json } from '../state/tree.ts';
import { fromBase64Url } from './base64Url.ts';
import { inflate } from './deflate.ts';
import { LINK_VERSION } from './encodePlan.ts';
import { linkCheck } from './linkCheck.ts';

/** What the part of an address after `#` says. */
export type PlanLink =
  /** No plan: empty, or a place on the page. */
  | { readonly kind: 'nothing' }
  | { readonly kind: 'example'; readonly id: ExampleId }
  | { readonly kind: 'plan'; readonly draft: Json }
  /** Written by a newer page than this one. */
  | { readonly kind: 'newer' }
  | { readonly kind: 'damaged' };

const CHECK_BYTES = 4;

/** Reads what `encodePlan` wrote, and says what is the matter with anything else. */
export async function decodePlan(fragment: string): Promise<PlanLink> {
  const text = fragment.replace(/^#/, '');
  if (isExample(text)) return { kind: 'example', id: text };
  if (/^(?!\d).{0,40}$/s.test(text)) return { kind: 'nothing' };
  const [, version = '', packed = ''] = /^(\d{1,6})\.(.*)$/s.exec(text) ?? [];
  if (Number(version) > LINK_VERSION) return { kind: 'newer' };
  const draft = Number(version) === LINK_VERSION ? await unpack(packed) : null;
  return draft === null ? { kind: 'damaged' } : { kind: 'plan', draft };
}

async function unpack(text: string): Promise<Json> {
  const bytes = fromBase64Url(text);
  if (bytes === null) return null;
  const [check, packed] = [bytes.subarray(0, CHECK_BYTES), bytes.subarray(CHECK_BYTES)];
  if (String(linkCheck(packed)) !== String(check)) return null;
  return draftIn(await inflate(packed));
}

/** The draft in a text: JSON with the three parts of a plan, whatever they hold. */
function draftIn(text: string | null): Json {
  try {
    const draft: Json = JSON.parse(text ?? '');
    const isDraft =
      isRecord(draft) && ['client', 'gym', 'intent'].every((part) => isRecord(draft[part]));
    return isDraft ? draft : null;
  } catch {
    return null;
  }
}
