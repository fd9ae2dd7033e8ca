import type { NoSession } from '@windlass/core/session';
import { words } from '../words.ts';

/** In place of a session: why somebody has to be asked, and whom. */
export function AskFirst({ plan }: { readonly plan: NoSession }) {
  return (
    <div class="ask-first">
      <p class="ask-first-title">{words.askFirst.title}</p>
      <p>{words.askFirst.says}</p>
      <ul>
        {plan.reasons.map((reason) => (
          <li key={reason}>{reason}</li>
        ))}
      </ul>
      <p>
        <strong>{words.askFirst.whom}:</strong>{' '}
        {plan.ask.map((adviser) => words.advisers[adviser]).join(', ')}.
      </p>
    </div>
  );
}
