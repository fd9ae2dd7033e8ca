import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { Application } from 'typedoc';

/** Where the generated Markdown is; `src/content.config.ts` reads it from there. */
const folder = new URL('../.cache/reference/', import.meta.url);

/** Writes the reference from the doc comments before each build, and once before working on pages. */
export function reference(): AstroIntegration {
  return {
    name: 'windlass-reference',
    hooks: {
      'astro:config:setup': async ({ command }) => {
        if (command === 'build' || (command === 'dev' && !existsSync(folder))) await write();
      },
    },
  };
}

/** Core first: it clears the folder, and the calculators go into a folder in it. */
async function write(): Promise<void> {
  for (const name of ['core', 'calculators']) {
    const options = fileURLToPath(new URL(`${name}.json`, import.meta.url));
    const application = await Application.bootstrapWithPlugins({ options });
    const project = await application.convert();
    if (project === undefined) throw new Error(`The reference of ${name} could not be written.`);
    await application.generateOutputs(project);
  }
}
