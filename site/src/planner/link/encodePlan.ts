import { exampleIds, examples, firstExample } from '../state/examples.ts';
import type { Json } from '../state/tree.ts';
import { toBase64Url } from './base64Url.ts';
import { deflate } from './deflate.ts';
import { linkCheck } from './linkCheck.ts';

/** How links are written. A reader of links knows every version up to its own. */
export const LINK_VERSION = 1;

/**
 * A draft as the part of an address after `#`, which no browser sends to a server. An example that
 * nobody has changed is its name, the one that the page opens with nothing; any other draft is whole, so that the
 * link means the same when the examples change.
 */
export async function encodePlan(draft: Json): Promise<string> {
  const text = JSON.stringify(draft);
  const example = exampleIds.find((id) => JSON.stringify(examples[id]) === text);
  if (example !== undefined) return examples[example] === firstExample ? '' : example;
  const packed = await deflate(text);
  const check = linkCheck(packed);
  return `${LINK_VERSION}.${toBase64Url(new Uint8Array([...check, ...packed]))}`;
}
