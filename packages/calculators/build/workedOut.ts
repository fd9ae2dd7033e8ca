import { pathToFileURL } from 'node:url';
import { exercises, muscles } from '@windlass/core/anatomy';
import type { Plugin } from 'esbuild';
import { WORDED } from '../languages/messagesIn.ts';
import type { Catalogue } from '../languages/translate.ts';
import { getter, LATER, type LaterTexts, numberOf } from './laterTexts.ts';
import { columnsOf, packTable, unpackSource } from './packTable.ts';

/** What is different about how values are written for a bundle. */
export interface WrittenAs {
  readonly catalogue?: Catalogue | undefined;
  /** Columns that are left out. */
  readonly unread?: ReadonlySet<string>;
  /** Where long texts go that are fetched later. */
  readonly texts?: LaterTexts;
}

/**
 * What is worked out while building comes to browsers as plain data: the modules of `precomputed`,
 * and the tables of exercises and muscles. Their texts are translated where there is a catalogue.
 */
export function workedOut({ catalogue, unread = new Set(), texts }: WrittenAs = {}): Plugin {
  const write = (value: unknown) => source(value, catalogue, texts);
  return {
    name: 'worked-out',
    setup({ onLoad }) {
      onLoad(
        { filter: /src.precomputed.\w+\.ts$|core.src.anatomy.(exercises|muscles)\.ts$/ },
        async ({ path }) => {
          const values: Record<string, unknown> = await import(pathToFileURL(path).href);
          const lines = Object.entries(values).map(([name, value]) => {
            const made = isTable(value) ? packTable(value, unread, write) : `(${write(value)})`;
            return `export const ${name} = /* @__PURE__ */ ${made};`;
          });
          const head = texts ? [`import { later } from '${LATER}';`, unpackSource] : [unpackSource];
          return { contents: [...head, ...lines].join('\n'), loader: 'js' };
        },
      );
    },
  };
}

function isTable(value: unknown): value is readonly object[] {
  return (
    Array.isArray(value) && value.every((row) => typeof row === 'object' && !Array.isArray(row))
  );
}

/** The columns of the tables of the core. */
export const allColumns: ReadonlySet<string> = new Set([
  ...columnsOf(exercises),
  ...columnsOf(muscles),
]);

/** Columns that code, bundled without the tables, reads nowhere: as a property, by name, or taken apart. */
export function unreadColumns(code: string): ReadonlySet<string> {
  const isRead = (name: string) =>
    new RegExp(`\\.${name}\\b|[{,]\\s*${name}\\s*[,:=}]|["']${name}["']`).test(code);
  return new Set([...allColumns].filter((name) => !isRead(name)));
}

/** The source of a value; what a set-up changes is said later, where there is a place for that. */
function source(value: unknown, catalogue?: Catalogue, texts?: LaterTexts, of = ''): string {
  if (Array.isArray(value)) {
    return `[${value.map((one) => source(one, catalogue, texts, of)).join(',')}]`;
  }
  if (typeof value === 'string') return JSON.stringify(said(value, of, catalogue));
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const parts = Object.entries(value).map(([name, part]) =>
    texts && name === 'effect'
      ? getter(name, numberOf(said(part, name, catalogue), texts))
      : `${JSON.stringify(name)}:${source(part, catalogue, texts, name)}`,
  );
  return `{${parts.join(',')}}`;
}

/** A text in the language of a catalogue. A small word by itself is an id, which code compares. */
function said(text: string, property: string, catalogue: Catalogue | undefined): string {
  const isId = /^[a-z\d-]+$/.test(text) && !WORDED.has(property);
  return (isId ? undefined : catalogue?.get(text)) ?? text;
}
