import type { Caution } from '@windlass/core/safety';
import { words } from '../words.ts';

/** The cautions that apply: what, why, what to do instead, whom to ask, and the source. */
export function CautionStrip({ cautions }: { readonly cautions: readonly Caution[] }) {
  if (cautions.length === 0) return null;
  const onlyNotes = cautions.every(({ level }) => level === 'note');
  return (
    <section class="wl-panel wl-cautions" data-only-notes={onlyNotes ? 'true' : undefined}>
      <h2 class="wl-heading">{words.more.cautions}</h2>
      <ul>
        {cautions.map(({ id, level, what, why, instead, ask, sources }) => (
          <li key={id} data-level={level}>
            <strong>
              {words.cautions.level[level]}: {what}
            </strong>{' '}
            {why} {instead}{' '}
            {ask.length > 0 &&
              words.cautions.ask(ask.map((adviser) => words.cautions.advisers[adviser]))}
            <cite class="wl-cite">{sources.map(({ citation }) => citation).join(' ')}</cite>
          </li>
        ))}
      </ul>
    </section>
  );
}
