import type { SatteriProcessorOptions } from '@astrojs/markdown-satteri';

type HastPlugin = NonNullable<SatteriProcessorOptions['hastPlugins']>[number];

/**
 * Points links in Markdown at pages of this site: `/tools/` gets the base path the site is built
 * for, and `load.md#kg`, as the generated reference writes it, the reference page of that entry.
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
        const entry = /^([\w-]+)\.md(#.*)?$/.exec(href);
        if (entry) {
          ctx.setProperty(
            node,
            'href',
            `${root}/developers/reference/${entry[1]}/${entry[2] ?? ''}`,
          );
        } else if (href.startsWith('/')) {
          ctx.setProperty(node, 'href', `${root}${href}`);
        }
      },
    },
  };
}
