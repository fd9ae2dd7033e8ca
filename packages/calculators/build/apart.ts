import { readFileSync } from 'node:fs';
import type { Plugin } from 'esbuild';
import type { Rewrite } from './fromSources.ts';

/** Leaves modules out of a bundle, which asks for what is in them at `address`. */
export function apart(modules: ReadonlySet<string>, address: string): Plugin {
  return {
    name: 'apart',
    setup({ onResolve, resolve }) {
      onResolve({ filter: /^\.\.?\/.*\.tsx?$/ }, async (asked) => {
        if (asked.pluginData === 'resolving') return undefined;
        const { importer, resolveDir, kind } = asked;
        const found = await resolve(asked.path, {
          kind,
          importer,
          resolveDir,
          pluginData: 'resolving',
        });
        return modules.has(found.path) ? { path: address, external: true } : undefined;
      });
    },
  };
}

/** Has a file give out what is in other modules, too: all of it, or what is asked for by name. */
export function givingOut(
  file: string,
  modules: ReadonlySet<string>,
  names?: ReadonlySet<string>,
): Rewrite {
  const lines = [...modules].map((path) => {
    const found = names && exportsOf(path).filter((name) => names.has(name));
    return `export ${found ? `{ ${found.join(', ')} }` : '*'} from ${JSON.stringify(path)};`;
  });
  return (path, source) => (path === file ? `${source}\n${lines.join('\n')}` : source);
}

function exportsOf(path: string): readonly string[] {
  const source = readFileSync(path, 'utf8');
  const found = source.matchAll(/^export (?:async )?(?:const|function|class) (\w+)/gm);
  return [...found].map(([, name]) => name ?? '');
}

/** The names that a finished bundle asks of another one. */
export function namesAsked(bundle: string, address: string): ReadonlySet<string> {
  const imports = bundle.matchAll(/import \{([^}]*)\} from "([^"]*)"/g);
  const names = [...imports].flatMap(([, list = '', from]) =>
    from === address ? list.split(',').map((one) => one.trim().split(' as ')[0] ?? '') : [],
  );
  return new Set(names.filter((name) => name !== ''));
}
