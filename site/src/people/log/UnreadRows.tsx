import type { UnreadRow } from '@windlass/core/progress';
import { saveFile } from '../../planner/saveFile.ts';
import { words } from './words.ts';

const MOST_SHOWN = 50;

/** Every row that could not be read, with its line, its text and what would be right. */
export function UnreadRows({ unread }: { readonly unread: readonly UnreadRow[] }) {
  const asked = words.brought;
  const reasons = ({ problems }: UnreadRow) => problems.map(({ message }) => message).join(' ');
  const asText = () =>
    unread.map((row) => `${asked.line(row.line)}: ${row.text}\n  ${reasons(row)}\n`).join('');
  return (
    <div class="unread">
      <p class="wl-mark">{asked.unread(unread.length)}</p>
      <ol>
        {unread.slice(0, MOST_SHOWN).map((row) => (
          <li key={row.line}>
            <span class="unread-line">{asked.line(row.line)}</span> <code>{row.text}</code>{' '}
            <span>{reasons(row)}</span>
          </li>
        ))}
      </ol>
      {unread.length > MOST_SHOWN && <p>{asked.moreUnread(unread.length - MOST_SHOWN)}</p>}
      <button type="button" class="wl-button" onClick={() => saveFile(asked.unreadFile, asText())}>
        {asked.saveUnread}
      </button>
    </div>
  );
}
