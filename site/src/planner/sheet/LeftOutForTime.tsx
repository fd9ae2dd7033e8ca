import type { TimeLimit } from '@windlass/core/session';
import { words } from '../words.ts';

/** What was left out so that the session fits into its time, each with what it saves. */
export function LeftOutForTime({ limit }: { readonly limit: TimeLimit }) {
  const { minutesAtMost, without, dropped, turns } = limit;
  if (dropped.length === 0) return null;
  return (
    <div class="soft">
      <p>{words.head.within(minutesAtMost, Math.ceil(without.total))}</p>
      <ul>
        {dropped.map(({ message, minutesSaved }) => (
          <li key={message}>
            {message} ({words.head.saves(Math.round(10 * minutesSaved) / 10)})
          </li>
        ))}
      </ul>
      {turns && <p>{turns.message}</p>}
    </div>
  );
}
