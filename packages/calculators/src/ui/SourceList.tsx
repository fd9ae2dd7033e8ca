import type { Source } from '@windlass/core/basis';
import { below } from './below/words.ts';

/** Where the figures come from, and how each was read. */
export function SourceList({ sources }: { readonly sources: readonly Source[] }) {
  if (sources.length === 0) return null;
  return (
    <section class="wl-panel">
      <h2 class="wl-heading">{below.sources}</h2>
      <ul class="wl-sources">
        {sources.map(({ id, citation, doi, standing }) => (
          <li key={id}>
            {citation}{' '}
            {doi && (
              <a href={`https://doi.org/${doi}`} rel="external">
                doi:{doi}
              </a>
            )}{' '}
            <span class="wl-soft">({below.standing[standing]})</span>
          </li>
        ))}
      </ul>
    </section>
  );
}
