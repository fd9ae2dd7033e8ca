import { getCollection } from 'astro:content';
import type { APIRoute } from 'astro';
import { entries } from '../lib/entries.ts';
import { fullText } from '../llms/fullText.ts';

export const GET: APIRoute = async () => {
  const pages = await getCollection('reference');
  return new Response(
    fullText(
      entries,
      pages.map(({ id, body = '' }) => ({ id, body })),
    ),
  );
};
