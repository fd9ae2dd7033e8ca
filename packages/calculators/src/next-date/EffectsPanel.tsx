import type { MuscleReadiness, RecoveryEffect } from '@windlass/core/recovery';
import { muscleName } from './muscleName.ts';
import { said } from './words.ts';

/** Each report that changes the hours, once, with what it rests on. */
export function EffectsPanel({ muscles }: { readonly muscles: readonly MuscleReadiness[] }) {
  const lines = effectLines(muscles);
  return (
    <section class="wl-panel">
      <h2 class="wl-heading">{said.effects}</h2>
      {lines.length === 0 && <p>{said.effectsNone}</p>}
      <ul class="wl-sources">
        {lines.map(({ line, sources }) => (
          <li key={line}>
            {line}
            <cite class="wl-cite">{sources.map(({ citation }) => `${citation}.`).join(' ')}</cite>
          </li>
        ))}
      </ul>
    </section>
  );
}

interface EffectLine extends Pick<RecoveryEffect, 'sources'> {
  readonly line: string;
}

function effectLines(muscles: readonly MuscleReadiness[]): readonly EffectLine[] {
  const lines = muscles.flatMap(({ muscle, effects }) =>
    effects.map(({ report, says, sources }) => ({
      line: report === 'soreness' ? said.effectFor(muscleName(muscle), says) : says,
      sources,
    })),
  );
  return [...new Map(lines.map((one) => [one.line, one])).values()];
}
