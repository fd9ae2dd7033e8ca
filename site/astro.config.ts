import { satteri } from '@astrojs/markdown-satteri';
import mdx from '@astrojs/mdx';
import sitemap from '@astrojs/sitemap';
import { defineConfig } from 'astro/config';
import { type LanguageId, languages } from '../packages/calculators/languages/readCatalogue.ts';
import { checkedPages } from './check/integration.ts';
import { offline } from './offline/integration.ts';
import { reference } from './reference/integration.ts';
import { reachableCode } from './src/markdown/reachableCode.ts';
import { siteLinks } from './src/markdown/siteLinks.ts';
import { searchIndex } from './src/search/index/integration.ts';
import { translatedBundle } from './translation/inLanguage.ts';
import { onlyTranslated, translatedFolder, withTranslations } from './translation/integration.ts';

const base = (process.env.WINDLASS_BASE ?? '/').replace(/\/?$/, '/');
const language = languages.find((id) => id === process.env.WINDLASS_LANGUAGE);

/** One file for all of Preact: what draws and what keeps state are always wanted together. */
const client = {
  build: {
    rolldownOptions: {
      output: { codeSplitting: { groups: [{ name: 'preact', test: /node_modules.preact/ }] } },
    },
  },
};

/** The whole site, in English. */
const whole = {
  base,
  outDir: './dist',
  vite: { build: { assetsInlineLimit: 0 }, environments: { client } },
  integrations: [
    reference(),
    mdx(),
    sitemap({ filter: (page) => !page.endsWith('/offline/') }),
    withTranslations(),
    searchIndex(base),
    checkedPages(base),
    offline(base),
  ],
};

/** The pages that another language has, into a folder of their own. */
const translated = (to: LanguageId) => ({
  base: `${base}${to}/`,
  outDir: translatedFolder(to),
  cacheDir: `./node_modules/.astro/${to}`,
  vite: {
    build: { assetsInlineLimit: 0 },
    environments: { client },
    ...translatedBundle(to),
  },
  integrations: [mdx(), onlyTranslated()],
});

export default defineConfig({
  ...(language ? translated(language) : whole),
  site: process.env.WINDLASS_SITE ?? 'https://windlass.example',
  trailingSlash: 'always',
  compressHTML: true,
  devToolbar: { enabled: false },
  build: { assets: 'assets', inlineStylesheets: 'never' },
  markdown: {
    // Prism marks code with classes; the default highlighter writes inline styles, which the
    // content-security policy refuses.
    syntaxHighlight: 'prism',
    processor: satteri({ hastPlugins: [siteLinks(base), reachableCode] }),
  },
});
