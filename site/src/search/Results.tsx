import { useState } from 'preact/hooks';
import type { Found, Hit } from './find.ts';
import { HitView } from './HitView.tsx';
import { Nothing } from './Nothing.tsx';
import type { Group } from './SearchEntry.ts';
import { words } from './words.ts';

/** What the search has to show. */
export type Answer = Found | 'fetching' | 'failed' | 'nothing-asked';

export interface ResultsProps {
  readonly answer: Answer;
  readonly query: string;
  /** The folder of the site. */
  readonly base: string;
  /** Hits of a kind that are shown at first. */
  readonly most: number;
  /** Only a part of a page, which leads to the page of the search. */
  readonly isPanel?: boolean;
}

/** How many places were found, then the places by kind. The count is read aloud as it changes. */
export function Results({ answer, query, base, most, isPanel = false }: ResultsProps) {
  const found = typeof answer === 'string' ? undefined : answer;
  return (
    <div class="found">
      <p class="found-count" role="status">
        {says(answer, query)}
      </p>
      {found?.count === 0 && <Nothing base={base} isPanel={isPanel} />}
      {found?.byGroup.map(({ group, hits }) => (
        <GroupView
          key={`${group} ${query}`}
          group={group}
          hits={hits}
          base={base}
          most={most}
          isPanel={isPanel}
        />
      ))}
      {isPanel && found && found.count > 0 && (
        <p class="found-all">
          <a href={`${base}search/?${new URLSearchParams({ q: query })}`}>{words.allResults}</a>
        </p>
      )}
    </div>
  );
}

function says(answer: Answer, query: string): string {
  if (answer === 'nothing-asked') return '';
  if (answer === 'fetching') return words.fetching;
  if (answer === 'failed') return words.failed;
  if (answer.count === 0) return words.nothing(query);
  return (answer.isPartly ? words.nearly : words.found)(answer.count, query);
}

interface GroupProps extends Pick<ResultsProps, 'base' | 'most' | 'isPanel'> {
  readonly group: Group;
  readonly hits: readonly Hit[];
}

function GroupView({ group, hits, base, most, isPanel }: GroupProps) {
  const [isWhole, setWhole] = useState(false);
  const name = words.groups[group];
  const shown = isWhole ? hits : hits.slice(0, most);
  return (
    <section class="part">
      <h2>{name}</h2>
      <div class="part-body">
        <ul class="found-hits">
          {shown.map((hit) => (
            <HitView key={hit.id} hit={hit} base={base} />
          ))}
        </ul>
        {shown.length < hits.length && !isPanel && (
          <button type="button" class="found-more" onClick={() => setWhole(true)}>
            {words.showAll(hits.length, name)}
          </button>
        )}
      </div>
    </section>
  );
}
