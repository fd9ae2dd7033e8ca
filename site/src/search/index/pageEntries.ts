import { type HTMLElement, parse } from 'node-html-parser';
import type { Group, SearchEntry } from '../SearchEntry.ts';

type Entry = Omit<SearchEntry, 'id'>;

/** What is on a page and not of it: menus, live tools, drawings. */
const APART = 'nav, script, svg, [data-calculator], .calculator-rest';

/**
 * What can be found on a page of the built site. A page of the reference is its name, its first
 * sentence and its properties; an article is its sections; any other page is its title, what it
 * says of itself, and its headings.
 */
export function pageEntries(path: string, html: string): readonly Entry[] {
  const page = parse(html);
  const main = page.querySelector('main');
  const title = textOf(main?.querySelector('h1'));
  if (main === null || title === '') return [];
  for (const part of main.querySelectorAll(APART)) part.remove();
  if (path.startsWith('developers/reference/')) return [referenceEntry(path, title, main)];
  const summary = page.querySelector('meta[name=description]')?.getAttribute('content') ?? '';
  const group: Group = /^guides\/./.test(path) ? 'guides' : 'pages';
  const article = main.querySelector('article');
  if (article) return articleEntries({ group, path, title, summary, article });
  const headings = main.querySelectorAll('h2, h3').map(textOf).join(' ');
  return [{ group, path, title, section: '', text: summary, terms: headings }];
}

function referenceEntry(path: string, title: string, main: HTMLElement): Entry {
  const properties = main.querySelectorAll('[id^="property-"] + code').map(textOf);
  return {
    group: 'reference',
    path,
    title,
    section: '',
    text: textOf(main.querySelector('.reference > p') ?? main.querySelector('.reference-answers')),
    terms: properties.join(' '),
  };
}

interface Article {
  readonly group: Group;
  readonly path: string;
  readonly title: string;
  readonly summary: string;
  readonly article: HTMLElement;
}

/** The article before its first section, then each section by its heading. */
function articleEntries({ group, path, title, summary, article }: Article): readonly Entry[] {
  article.querySelector('h1')?.remove();
  const [opening = '', ...rest] = article.innerHTML.split(/<h2\s[^>]*?id="([^"]+)"[^>]*>/);
  const whole: Entry = {
    group,
    path,
    title,
    section: '',
    text: summary,
    terms: htmlText(opening).replace(summary, '').trim(),
  };
  const sections = rest.flatMap((id, at) => {
    if (at % 2 === 1) return [];
    const [heading = '', body = ''] = (rest[at + 1] ?? '').split('</h2>');
    const section = htmlText(heading);
    return [{ group, path: `${path}#${id}`, title, section, text: htmlText(body), terms: '' }];
  });
  return [whole, ...sections];
}

function htmlText(html: string): string {
  return textOf(parse(html));
}

function textOf(element: HTMLElement | null | undefined): string {
  return element?.structuredText.replace(/\s+/g, ' ').trim() ?? '';
}
