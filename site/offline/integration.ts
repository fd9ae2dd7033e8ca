import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { writeWorker } from './writeWorker.ts';

/**
 * Makes the built site work without a network. It comes after every integration that writes files,
 * so that the worker knows them all.
 */
export function offline(base: string): AstroIntegration {
  return {
    name: 'windlass-offline',
    hooks: {
      'astro:build:done': async ({ dir, logger }) => {
        const { first } = await writeWorker(
          fileURLToPath(dir),
          base.endsWith('/') ? base : `${base}/`,
        );
        logger.info(`${first.length} files are kept at the first visit`);
      },
    },
  };
}
