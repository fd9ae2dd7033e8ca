import type { SavedPart } from './saved/SavedIds.ts';

/**
 * What the address asks to be opened of all that is kept, such as `?person=…`. It is taken out of
 * the address, which from then on holds the plan itself.
 */
export function askedInAddress(): { readonly part: SavedPart; readonly id: string } | null {
  const query = new URLSearchParams(location.search);
  const [person, gym] = [query.get('person'), query.get('gym')];
  if (person === null && gym === null) return null;
  query.delete('person');
  query.delete('gym');
  const rest = query.size === 0 ? '' : `?${query}`;
  history.replaceState(history.state, '', `${location.pathname}${rest}${location.hash}`);
  return person === null ? { part: 'gym', id: gym ?? '' } : { part: 'client', id: person };
}
