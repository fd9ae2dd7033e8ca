import { getCollection } from 'astro:content';
import { calculators } from '@windlass/calculators';
import type { APIRoute } from 'astro';
import { entries } from '../lib/entries.ts';
import { href } from '../lib/href.ts';
import { manualPath } from '../lib/manualPath.ts';
import { coreSchemas } from '../lib/schemas.ts';
import { toolHref } from '../lib/tools.ts';
import { llmsText } from '../llms/llmsText.ts';
import { words } from '../llms/words.ts';

export const GET: APIRoute = async ({ site }) => {
  const lead = (name: string, path: string, says: string) => ({
    name,
    url: new URL(path, site).href,
    says,
  });
  const byOrder = (a: { data: { order: number } }, b: { data: { order: number } }) =>
    a.data.order - b.data.order;
  const manual = (await getCollection('developers')).sort(byOrder);
  const guides = (await getCollection('guides')).sort(byOrder);
  const text = llmsText({
    entries: entries.map(({ name, module, answers }) =>
      lead(module, href(`/developers/reference/${name}/`), answers),
    ),
    manual: manual.map(({ id, data }) => lead(data.title, href(manualPath(id)), data.summary)),
    tools: [
      lead(words.planner.name, href('/plan/'), words.planner.says),
      ...calculators.map(({ id, title, question }) => lead(title, toolHref(id), question)),
    ],
    guides: guides.map(({ id, data }) => lead(data.title, href(`/guides/${id}/`), data.summary)),
    schemas: coreSchemas.map(({ path, describes }) =>
      lead(path, href(`/developers/schemas/${path}.json`), describes),
    ),
    more: [lead(words.full.name, href('/llms-full.txt'), words.full.says)],
  });
  return new Response(text);
};
