import type { SatteriProcessorOptions } from '@astrojs/markdown-satteri';

/** A plugin of the Markdown processor that works on its HTML. */
export type HastPlugin = NonNullable<SatteriProcessorOptions['hastPlugins']>[number];
