import { satteri } from '@astrojs/markdown-satteri';
import mdx from '@astrojs/mdx';
import sitemap from '@astrojs/sitemap';
import { defineConfig } from 'astro/config';
import { checkedPages } from './check/integration.ts';
import { offline } from './offline/integration.ts';
import { reference } from './reference/integration.ts';
import { reachableCode } from './src/markdown/reachableCode.ts';
import { siteLinks } from './src/markdown/siteLinks.ts';

const base = process.env.WINDLASS_BASE ?? '/';

export default defineConfig({
  site: process.env.WINDLASS_SITE ?? 'https://windlass.example',
  base,
  trailingSlash: 'always',
  compressHTML: true,
  devToolbar: { enabled: false },
  build: { assets: 'assets', inlineStylesheets: 'never' },
  vite: { build: { assetsInlineLimit: 0 } },
  integrations: [
    reference(),
    mdx(),
    sitemap({ filter: (page) => !page.endsWith('/offline/') }),
    checkedPages(base),
    offline(base),
  ],
  markdown: {
    // Prism marks code with classes; the default highlighter writes inline styles, which the
    // content-security policy refuses.
    syntaxHighlight: 'prism',
    processor: satteri({ hastPlugins: [siteLinks(base), reachableCode] }),
  },
});
