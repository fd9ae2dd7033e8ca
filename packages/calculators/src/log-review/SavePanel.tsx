import { type LoggedSet, writeLogCsv } from '@windlass/core/progress';
import { useEffect, useState } from 'preact/hooks';
import { saveFile } from '../ui/saveFile.ts';
import { said } from './words.ts';

/** The log as read, to be saved in the library's own columns. */
export function SavePanel({ sets }: { readonly sets: readonly LoggedSet[] }) {
  const [isAlive, setAlive] = useState(false);
  useEffect(() => setAlive(true), []);
  return (
    <section class="wl-panel wl-no-print">
      <h2 class="wl-heading">{said.file}</h2>
      <div class="wl-actions wl-save-place" data-wakes>
        {isAlive && (
          <button
            type="button"
            class="wl-button"
            onClick={() => saveFile(said.fileName, writeLogCsv(sets), 'text/csv;charset=utf-8')}
          >
            {said.save(sets.length)}
          </button>
        )}
      </div>
      <p class="wl-soft">{said.fileNote}</p>
    </section>
  );
}
