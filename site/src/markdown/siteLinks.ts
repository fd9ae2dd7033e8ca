import { referencePath } from '../lib/referencePath.ts';
import type { HastPlugin } from './HastPlugin.ts';

/**
 * Points links in Markdown at pages of this site: `/tools/` gets the base path the site is built
 * for, and `../functions/kg.md`, as the generated reference writes it, the page of that name.
 */
export function siteLinks(base: string): HastPlugin {
  const root = base.replace(/\/$/, '');
  return {
    name: 'site-links',
    element: {
      filter: ['a'],
      visit(node, ctx) {
        const href = node.properties?.href;
        if (typeof href !== 'string') return;
        if (href.startsWith('/')) ctx.setProperty(node, 'href', `${root}${href}`);
        if (!/^[\w./-]+\.md(#.*)?$/.test(href) || ctx.fileURL === undefined) return;
        const { pathname, hash } = new URL(href, ctx.fileURL);
        const [, page = ''] = pathname.split('/.cache/reference/');
        ctx.setProperty(node, 'href', `${root}${referencePath(page.replace(/\.md$/, ''))}${hash}`);
      },
    },
  };
}
