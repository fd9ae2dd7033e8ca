import type { UnreadRow } from '@windlass/core/progress';
import { useEffect, useState } from 'preact/hooks';
import { saveFile } from '../ui/saveFile.ts';
import { said } from './words.ts';

/** More rows than these are saved to a file instead of being written out. */
const WRITTEN_OUT = 100;

/** Every row that could not be read, with its line and what would be right. */
export function UnreadPanel({ unread }: { readonly unread: readonly UnreadRow[] }) {
  const [isAlive, setAlive] = useState(false);
  useEffect(() => setAlive(true), []);
  if (unread.length === 0) return null;
  const rest = unread.length - WRITTEN_OUT;
  const save = () => {
    const lines = unread.map((row) => `${row.line}\t${reasonOf(row)}\t${row.text}`);
    saveFile(said.unreadFile, lines.join('\n'), 'text/plain;charset=utf-8');
  };
  return (
    <section class="wl-panel">
      <h2 class="wl-heading">{said.unread(unread.length)}</h2>
      <table class="wl-table">
        <thead>
          <tr>
            <th scope="col">{said.unreadColumns.line}</th>
            <th scope="col">{said.unreadColumns.row}</th>
          </tr>
        </thead>
        <tbody>
          {unread.slice(0, WRITTEN_OUT).map((row, place) => (
            <tr key={place}>
              <th scope="row">{row.line}</th>
              <td>
                <code class="wl-cell-text">{row.text.slice(0, 300)}</code>
                <span class="wl-row-note">{reasonOf(row)}</span>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {rest > 0 && <p>{said.unreadRest(rest)}</p>}
      {isAlive && (
        <div class="wl-actions wl-no-print">
          <button type="button" class="wl-button" onClick={save}>
            {said.saveUnread}
          </button>
        </div>
      )}
    </section>
  );
}

function reasonOf({ problems }: UnreadRow): string {
  return [...new Set(problems.map(({ message }) => message))].join(' ');
}
