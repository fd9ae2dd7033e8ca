import type { UnreadRecord } from '@windlass/core/schema';
import { words } from './words.ts';

/** Records of a file that are damaged, each with the reason. */
export function UnreadRecords({ unread }: { readonly unread: readonly UnreadRecord[] }) {
  if (unread.length === 0) return null;
  return (
    <div class="unread">
      <p class="wl-mark">{words.unread(unread.length)}</p>
      <ol>
        {unread.map(({ kind, number, problems }) => (
          <li key={`${kind}/${number}`}>
            <span class="unread-line">{words.place(words.kinds[kind], number)}</span>{' '}
            {problems.map(({ message }) => message).join(' ')}
          </li>
        ))}
      </ol>
    </div>
  );
}
