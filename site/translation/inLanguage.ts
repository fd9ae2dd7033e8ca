import { fileURLToPath } from 'node:url';
import type { ViteUserConfig } from 'astro';
import {
  type LanguageId,
  readCatalogue,
} from '../../packages/calculators/languages/readCatalogue.ts';
import { coreSource, rewritten } from '../../packages/calculators/languages/translatedSources.ts';

const packages = fileURLToPath(new URL('../../packages', import.meta.url));

/** How the site is bundled in another language: all sources with their texts translated. */
export function translatedBundle(
  language: LanguageId,
): Pick<ViteUserConfig, 'plugins' | 'resolve'> {
  const rewrite = rewritten(language, readCatalogue(packages, language));
  const calculators = `${packages}/calculators`;
  return {
    resolve: {
      alias: [
        {
          find: /^@windlass\/calculators\/(ui|live)$/,
          replacement: `${calculators}/src/$1/index.ts`,
        },
        {
          find: /^@windlass\/calculators$/,
          replacement: `${calculators}/dist/${language}/index.js`,
        },
        {
          find: '@windlass/calculators/hydrate',
          replacement: `${calculators}/dist/${language}/hydrate.js`,
        },
        { find: /^@windlass\/core\/([a-z]+)$/, replacement: coreSource(packages, '$1') },
      ],
    },
    plugins: [
      {
        name: `windlass-in-${language}`,
        enforce: 'pre',
        transform(source, id) {
          const [path = ''] = id.split('?');
          if (!/\.tsx?$/.test(path) || path.includes('node_modules')) return null;
          return { code: rewrite(path, source), map: null };
        },
      },
    ],
  };
}
