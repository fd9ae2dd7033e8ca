import { useRef, useState } from 'preact/hooks';
import { Counts } from './Counts.tsx';
import { Erase } from './Erase.tsx';
import { useKeeping } from './Keeping.ts';
import { Lasting } from './Lasting.tsx';
import { Restore } from './laterParts.ts';
import { Part } from './Part.tsx';
import { useBackup } from './useBackup.ts';
import { words } from './words.ts';

/** How much is kept and for how long, and the way out of the browser and back: as one file. */
export function KeptHere() {
  const { running } = useKeeping().people;
  const backup = useBackup();
  const input = useRef<HTMLInputElement>(null);
  const [file, setFile] = useState<File | null>(null);
  const [isErasing, setErasing] = useState(false);
  return (
    <Part name={words.kept.title}>
      <Counts />
      {running.length > 0 && <p class="soft">{words.running.says(running.length)}</p>}
      <Lasting />
      <div class="kept-actions">
        <button type="button" class="wl-button" onClick={backup}>
          {words.kept.backup}
        </button>
        <button type="button" class="wl-button" onClick={() => input.current?.click()}>
          {words.kept.restore}
        </button>
        <button
          type="button"
          class="wl-button"
          aria-expanded={isErasing}
          onClick={() => setErasing(!isErasing)}
        >
          {words.kept.erase}
        </button>
      </div>
      <input
        ref={input}
        type="file"
        accept=".json,application/json"
        aria-label={words.kept.restore}
        hidden
        onChange={({ currentTarget }) => {
          setFile(currentTarget.files?.[0] ?? null);
          currentTarget.value = '';
        }}
      />
      {isErasing && <Erase onBackup={backup} onDone={() => setErasing(false)} />}
      {file !== null && <Restore file={file} onDone={() => setFile(null)} />}
    </Part>
  );
}
