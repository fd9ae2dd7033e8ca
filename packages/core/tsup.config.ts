import { readdirSync } from 'node:fs';
import { defineConfig } from 'tsup';

const folders = readdirSync('src', { withFileTypes: true })
  .filter((item) => item.isDirectory())
  .map((item) => item.name);

export default defineConfig({
  entry: {
    index: 'src/index.ts',
    ...Object.fromEntries(folders.map((name) => [`${name}/index`, `src/${name}/index.ts`])),
  },
  format: 'esm',
  target: 'es2023',
  dts: true,
  clean: true,
  splitting: true,
  treeshake: true,
});
