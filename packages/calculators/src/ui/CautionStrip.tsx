import type { Caution } from '@windlass/core/safety';
import { words } from '../words.ts';
import { below } from './below/words.ts';

/** The cautions that apply: what, why, what to do instead, whom to ask, and the source. */
export function CautionStrip({ cautions }: { readonly cautions: readonly Caution[] }) {
  if (cautions.length === 0) return null;
  const onlyNotes = cautions.every(({ level }) => level === 'note');
  return (
    <section class="wl-panel wl-cautions" data-only-notes={onlyNotes ? 'true' : undefined}>
      <h2 class="wl-heading">{below.cautions}</h2>
      <ul>
        {cautions.map(({ id, level, what, why, instead, ask, sources }, place) => (
          <li key={id} data-level={level}>
            <strong>
              {words.cautions.level[level]}: {what}
            </strong>{' '}
            {why} {instead}{' '}
            {ask.length > 0 &&
              words.cautions.ask(ask.map((adviser) => words.cautions.advisers[adviser]))}
            <cite class="wl-cite">{citations(sources, cautions.slice(0, place))}</cite>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** What a caution rests on; a source that stands with one before it is not written out again. */
function citations(sources: Caution['sources'], before: readonly Caution[]): string {
  const shown = before.flatMap((caution) => caution.sources.map(({ id }) => id));
  const fresh = sources.filter(({ id }) => !shown.includes(id));
  const again = fresh.length < sources.length ? [words.cautions.above] : [];
  return [...fresh.map(({ citation }) => citation), ...again].join(' ');
}
