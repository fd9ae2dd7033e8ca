import type MiniSearch from 'minisearch';
import { render } from 'preact';
import { find } from './find.ts';
import { loadIndex } from './loadIndex.ts';
import { type Answer, Results } from './Results.tsx';
import type { SearchEntry } from './SearchEntry.ts';

export interface SearchPlace {
  readonly input: HTMLInputElement;
  /** Where the results go. */
  readonly place: HTMLElement;
  readonly base: string;
  /** Hits of a kind that are shown at first. */
  readonly most: number;
  readonly isPanel?: boolean;
  readonly onQuery?: (query: string) => void;
}

/** Answers a search field as one types. The index is fetched with the first letter. */
export function liveSearch({ input, place, base, most, isPanel, onQuery }: SearchPlace): void {
  let index: MiniSearch<SearchEntry> | undefined;

  const show = (answer: Answer, query: string) =>
    render(<Results {...{ answer, query, base, most }} {...(isPanel && { isPanel })} />, place);

  async function update(): Promise<void> {
    const query = input.value.trim();
    onQuery?.(query);
    if (query === '') return show('nothing-asked', query);
    if (!index) {
      show('fetching', query);
      try {
        index = await loadIndex(base);
      } catch {
        return show('failed', query);
      }
      if (query !== input.value.trim()) return;
    }
    show(find(index, query), query);
  }

  input.addEventListener('input', () => void update());
  void update();
}
