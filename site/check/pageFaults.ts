/** The pages of a built site by address under the base path: `tools/index.html` to its HTML. */
export type Pages = ReadonlyMap<string, string>;

/**
 * What is wrong with the pages: a link or anchor that leads nowhere, an address outside the base
 * path, an id given twice, anything inline that the content-security policy would refuse, anything
 * fetched from elsewhere. One line a fault, the page first.
 */
export function pageFaults(pages: Pages, files: ReadonlySet<string>, base: string): string[] {
  const ids = new Map([...pages].map(([path, html]) => [path, idsIn(html)]));
  return [...pages].flatMap(([path, html]) =>
    [
      ...twice(ids.get(path) ?? []).map((id) => `id "${id}" is given twice`),
      ...inlineParts(html),
      ...brokenLinks(path, html, base, files, ids),
    ].map((fault) => `${path}: ${fault}`),
  );
}

function idsIn(html: string): readonly string[] {
  return [...html.matchAll(/\sid="([^"]+)"/g)].map((match) => match[1] ?? '');
}

function twice(names: readonly string[]): readonly string[] {
  return [...new Set(names.filter((name, index) => names.indexOf(name) !== index))];
}

const inline: readonly (readonly [pattern: RegExp, fault: string])[] = [
  [/\sstyle="/, 'a style attribute'],
  [/<style[\s>]/, 'an inline style sheet'],
  [/<script(?![^>]*\ssrc=)/, 'an inline script'],
  [/<[^>]+\son[a-z]+="/, 'an inline event handler'],
  [/<(?:script|img|iframe|source)[^>]*\ssrc="(?:https?:)?\/\//, 'a file from elsewhere'],
  [
    /<link[^>]*rel="(?:stylesheet|preload|icon)"[^>]*href="(?:https?:)?\/\//,
    'a file from elsewhere',
  ],
];

function inlineParts(html: string): readonly string[] {
  return inline.filter(([pattern]) => pattern.test(html)).map(([, fault]) => fault);
}

function brokenLinks(
  path: string,
  html: string,
  base: string,
  files: ReadonlySet<string>,
  ids: ReadonlyMap<string, readonly string[]>,
): readonly string[] {
  const page = new URL(path.replace(/index\.html$/, ''), `http://here${base}`);
  const links = [...html.matchAll(/\s(?:href|src)="([^"]*)"/g)].map((match) => match[1] ?? '');
  return [...new Set(links)].flatMap((link) => {
    const url = new URL(link.replaceAll('&#38;', '&').replaceAll('&amp;', '&'), page);
    if (url.host !== 'here') return [];
    if (!url.pathname.startsWith(base)) return [`${link} is outside ${base}`];
    const file = decodeURIComponent(url.pathname.slice(base.length)).replace(
      /(^|\/)$/,
      '$1index.html',
    );
    if (!files.has(file)) return [`${link} leads nowhere`];
    const anchor = decodeURIComponent(url.hash.slice(1));
    if (anchor === '' || !ids.has(file) || ids.get(file)?.includes(anchor)) return [];
    return [`${link} names no place on its page`];
  });
}
