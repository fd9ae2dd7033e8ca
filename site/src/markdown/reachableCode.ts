import type { HastPlugin } from './HastPlugin.ts';

/** Makes blocks of code reachable by keyboard: a long line scrolls sideways. */
export const reachableCode: HastPlugin = {
  name: 'reachable-code',
  element: {
    filter: ['pre'],
    visit(node, ctx) {
      ctx.setProperty(node, 'tabIndex', 0);
    },
  },
};
