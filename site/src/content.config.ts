import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
import { z } from 'astro/zod';

export const collections = {
  guides: defineCollection({
    loader: glob({ pattern: '*.mdx', base: './src/content/guides' }),
    schema: z.object({
      order: z.number(),
      title: z.string(),
      /** What a reader takes away, in one sentence. */
      summary: z.string(),
    }),
  }),
  // Written by `typedoc` from the doc comments before each build.
  reference: defineCollection({
    loader: glob({ pattern: ['*.md', '!index.md'], base: './src/content/reference' }),
  }),
};
