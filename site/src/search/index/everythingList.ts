import type MiniSearch from 'minisearch';
import { groups, type SearchEntry } from '../SearchEntry.ts';
import { words } from '../words.ts';

type Place = Pick<SearchEntry, 'group' | 'path' | 'title' | 'section' | 'text'>;

/** Where the list goes on the page of the search. */
const PLACE = '<div class="part-body" id="everything"></div>';

/** The page of the search with a list of all pages; of the reference its entries. Throws without a place for it. */
export function withEverything(html: string, places: readonly Place[], base: string): string {
  if (!html.includes(PLACE)) throw new Error('The page of the search has no place for its list.');
  const whole = places.filter(({ path, section }) => section === '' && !isInEntry(path));
  const lists = groups.map((group) => {
    const items = whole
      .filter((place) => place.group === group)
      .map(({ path, title, text }) => item(`${base}${path}`, title, text));
    const name = group === 'reference' ? words.referenceOf : words.groups[group];
    return `<h3>${escaped(name)}</h3><ul class="found-hits">${items.join('')}</ul>`;
  });
  return html.replace(PLACE, () => PLACE.replace('></', `>${lists.join('')}</`));
}

/** Everything that an index holds, in the order in which it was put in. */
export function placesOf(index: MiniSearch<SearchEntry>): readonly Place[] {
  return Array.from(
    { length: index.documentCount },
    (_, id) => index.getStoredFields(id) as Place & object,
  );
}

/** A page of the reference about one name; the page of its entry lists it. */
function isInEntry(path: string): boolean {
  return /^developers\/reference\/[^/]+\/./.test(path);
}

function item(address: string, title: string, text: string): string {
  return `<li><a href="${escaped(address)}">${escaped(title)}</a><p>${escaped(text)}</p></li>`;
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');
}
