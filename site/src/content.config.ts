import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
import { z } from 'astro/zod';

/** Guides stand in the folder of their language, English ones above the others. */
const language = process.env.WINDLASS_LANGUAGE ?? '';

export const collections = {
  guides: defineCollection({
    loader: glob({ pattern: '*.mdx', base: `./src/content/guides/${language}` }),
    schema: z.object({
      order: z.number(),
      title: z.string(),
      /** What a reader takes away, in one sentence. */
      summary: z.string(),
    }),
  }),
  developers: defineCollection({
    loader: glob({ pattern: '*.mdx', base: './src/content/developers' }),
    schema: z.object({
      order: z.number(),
      title: z.string(),
      /** What a reader can do afterwards, in one sentence. */
      summary: z.string(),
    }),
  }),
  // Written from the doc comments by `reference/integration.ts`: `load/index`, `load/functions/kg`.
  reference: defineCollection({
    loader: glob({
      pattern: ['*/**/*.md'],
      base: './.cache/reference',
      generateId: ({ entry }) => entry.replace(/\.md$/, ''),
    }),
  }),
};
