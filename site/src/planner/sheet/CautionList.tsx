import type { Caution } from '@windlass/core/safety';
import { words } from '../words.ts';
import { cautionShapes, gravestFirst } from './cautionOrder.ts';

/** What has to be known before loading, the gravest first: what, why, what instead, whom to ask. */
export function CautionList({ cautions }: { readonly cautions: readonly Caution[] }) {
  const ordered = gravestFirst(cautions);
  return (
    <section class="cautions" id="cautions" aria-labelledby="cautions-title">
      <h2 id="cautions-title">{words.cautions.title}</h2>
      {ordered.length === 0 && <p class="soft">{words.cautions.none}</p>}
      <ul>
        {ordered.map((caution) => (
          <CautionView key={caution.id} caution={caution} />
        ))}
      </ul>
    </section>
  );
}

function CautionView({ caution }: { readonly caution: Caution }) {
  const { id, level, what, why, instead, ask, sources } = caution;
  return (
    <li class="caution" id={`caution-${id}`} data-level={level}>
      <p class="caution-level">
        <span aria-hidden="true">{cautionShapes[level]}</span> {words.cautions.level[level]}
      </p>
      <h3>{what}</h3>
      <p class="caution-why">{why}</p>
      <p>
        <strong>{words.cautions.instead}:</strong> {instead}
      </p>
      {ask.length > 0 && (
        <p>
          <strong>{words.cautions.ask}:</strong>{' '}
          {ask.map((adviser) => words.advisers[adviser]).join(', ')}.
        </p>
      )}
      <details class="caution-sources">
        <summary>{words.cautions.sources}</summary>
        {sources.map((source) => (
          <p key={source.id}>
            {source.citation}{' '}
            {source.doi !== undefined && (
              <a href={`https://doi.org/${source.doi}`}>doi:{source.doi}</a>
            )}
          </p>
        ))}
      </details>
    </li>
  );
}
