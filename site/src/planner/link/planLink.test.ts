import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { examples, firstExample } from '../state/examples.ts';
import type { Json } from '../state/tree.ts';
import { toBase64Url } from './base64Url.ts';
import { decodePlan } from './decodePlan.ts';
import { deflate } from './deflate.ts';
import { encodePlan } from './encodePlan.ts';
import { linkCheck } from './linkCheck.ts';

const part = fc.dictionary(fc.string(), fc.jsonValue());
const anyDraft = fc
  .record({ client: part, gym: part, intent: part })
  .map((draft) => JSON.parse(JSON.stringify(draft)) as Json);

/** A link with a right check around a text that is no plan. */
async function linkOf(text: string): Promise<string> {
  const packed = await deflate(text);
  return `1.${toBase64Url(new Uint8Array([...linkCheck(packed), ...packed]))}`;
}

describe('a link', () => {
  it('gives back any draft, also one with wrong values in it', async () => {
    await fc.assert(
      fc.asyncProperty(anyDraft, async (draft) => {
        const link = await encodePlan(draft);
        expect(link).toMatch(/^1\.[\w-]+$/);
        expect(await decodePlan(`#${link}`)).toEqual({ kind: 'plan', draft });
      }),
    );
  });

  it('is nothing for the first example, and a name for the others', async () => {
    expect(await encodePlan(firstExample)).toBe('');
    expect(await encodePlan(examples['leg-day'])).toBe('leg-day');
    expect(await decodePlan('#first-day')).toEqual({ kind: 'example', id: 'first-day' });
  });

  it('of a whole plan with its gym stays below 2000 characters, which mail and chat carry', async () => {
    const link = await encodePlan({ ...examples['leg-day'], note: 'changed' });
    expect(link.length).toBeLessThan(2000);
  });

  it('that lost or changed a character never gives another plan', async () => {
    const draft: Json = { ...examples['pull-day'], changed: true };
    const link = await encodePlan(draft);
    await fc.assert(
      fc.asyncProperty(
        fc.nat(link.length - 3),
        fc.constantFrom('', 'A', 'z', '7', '-'),
        async (from, put) => {
          const place = from + 2;
          const read = await decodePlan(link.slice(0, place) + put + link.slice(place + 1));
          if (read.kind === 'plan') expect(read.draft).toEqual(draft);
          else expect(read.kind).toBe('damaged');
        },
      ),
    );
  });

  it.each(['#2.abc', '#17.'])('from a newer page is told apart: %s', async (fragment) => {
    expect(await decodePlan(fragment)).toEqual({ kind: 'newer' });
  });

  it.each(['#1.', '#1.!!', '#0.abc', `#${'x'.repeat(80)}`])('damaged: %s', async (fragment) => {
    expect(await decodePlan(fragment)).toEqual({ kind: 'damaged' });
  });

  it.each(['', '#', '#content', '#cautions'])('to a place on the page: "%s"', async (fragment) => {
    expect(await decodePlan(fragment)).toEqual({ kind: 'nothing' });
  });

  it('whose text is no plan, or swells beyond any plan, is damaged', async () => {
    for (const text of ['[]', '{"client":{},"gym":{}}', 'null', '{', ' '.repeat(3_000_000)]) {
      expect(await decodePlan(await linkOf(text))).toEqual({ kind: 'damaged' });
    }
  });
});
