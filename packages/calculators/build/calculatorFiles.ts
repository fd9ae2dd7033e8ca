import { readdirSync } from 'node:fs';
import { resolve } from 'node:path';
import type { Plugin } from 'esbuild';

/** The id of every calculator. */
export const ids = readdirSync('src', { withFileTypes: true, recursive: true })
  .filter(({ name }) => name === 'definition.ts')
  .map(({ parentPath }) => parentPath.replace(/^src./, ''));

export function definitionOf(id: string): string {
  return resolve('src', id, 'definition.ts');
}

/** In the frame each calculator stays a file of its own, fetched when it is needed. */
export const calculatorsApart: Plugin = {
  name: 'calculators-apart',
  setup({ onResolve }) {
    onResolve({ filter: /^\.\/[a-z-]+\/definition\.ts$/ }, ({ path }) => ({
      path: path.replace('./', './calculators/').replace('/definition.ts', '.js'),
      external: true,
    }));
  },
};

/** What follows a set live, fetched only when it is asked for. */
export const live = resolve('src/past-failure/live/LiveDialog.tsx');

export const liveApart: Plugin = {
  name: 'live-apart',
  setup({ onResolve }) {
    onResolve({ filter: /^\.\/live\/LiveDialog\.tsx$/ }, () => ({
      path: './past-failure-live.js',
      external: true,
    }));
  },
};
