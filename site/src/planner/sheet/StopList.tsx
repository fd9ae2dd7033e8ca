import type { StopRule } from '@windlass/core/safety';
import { words } from '../words.ts';

/** Signs that end a set, an exercise or the session, and what to do then. */
export function StopList({ rules }: { readonly rules: readonly StopRule[] }) {
  return (
    <section class="stops" aria-labelledby="stops-title">
      <h2 id="stops-title">{words.stop.title}</h2>
      <dl>
        {rules.map(({ id, sign, action }) => (
          <div key={id}>
            <dt>{sign}</dt>
            <dd>{action}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
