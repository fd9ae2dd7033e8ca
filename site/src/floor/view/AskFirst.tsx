import type { FloorSession } from '../session/FloorSession.ts';
import { words } from '../words.ts';

/** In place of a set: why somebody has to be asked, and whom. */
export function AskFirst({ reasons, ask }: NonNullable<FloorSession['askFirst']>) {
  return (
    <div class="floor-set floor-ask-first">
      <h2>{words.askFirst.title}</h2>
      <p>{words.askFirst.says}</p>
      <ul>
        {reasons.map((reason) => (
          <li key={reason}>{reason}</li>
        ))}
      </ul>
      <p>
        <strong>{words.askFirst.whom}:</strong>{' '}
        {ask.map((adviser) => words.advisers[adviser]).join(', ')}.
      </p>
    </div>
  );
}
