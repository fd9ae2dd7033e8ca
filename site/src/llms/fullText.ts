import { words } from './words.ts';

/** A page of the reference: `load/functions/parseLoad` and its Markdown. */
export interface ReferencePage {
  readonly id: string;
  readonly body: string;
}

/** An entry of the library, as the reference names it. */
export interface NamedEntry {
  readonly name: string;
  readonly module: string;
  readonly answers: string;
}

/**
 * The whole reference as one text, entry by entry. The lists of names that open an entry are left
 * out, since every name follows, and so are links between pages, which lead nowhere in one text.
 */
export function fullText(entries: readonly NamedEntry[], pages: readonly ReferencePage[]): string {
  const parts = entries.map(({ name, module, answers }) => {
    const own = pages.filter(({ id }) => id.startsWith(`${name}/`) && id !== `${name}/index`);
    const names = own.map(({ id, body }) => `### ${nameOf(id)}\n\n${withoutLinks(body)}`);
    return [`## ${module}`, `${answers}.`, ...names].join('\n\n');
  });
  return `${[`# ${words.title}`, `> ${words.fullSays}`, ...parts].join('\n\n')}\n`;
}

function nameOf(id: string): string {
  return id.slice(id.lastIndexOf('/') + 1);
}

/** Headings one step deeper than the name's own, and words in place of links; code stays as it is. */
function withoutLinks(body: string): string {
  return body
    .split(/(```[\s\S]*?```)/)
    .map((part) => (part.startsWith('```') ? part : plain(part)))
    .join('')
    .trim();
}

function plain(text: string): string {
  return text
    .replace(/\[([^\]]+)\]\((?!https?:)[^)]+\)/g, '$1')
    .replace(/^#+ /gm, '#### ')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('\\_', '_');
}
