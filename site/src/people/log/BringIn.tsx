import type { DoneSession } from '@windlass/core/schema';
import { useEffect, useState } from 'preact/hooks';
import type { Person } from '../People.ts';
import { type OpenedLog, openLogFile } from './openLogFile.ts';
import { ReadSets } from './ReadSets.tsx';
import { TableColumns } from './TableColumns.tsx';
import { words } from './words.ts';

interface BringInProps {
  readonly file: File;
  readonly person: Person;
  /** The log as it is. */
  readonly sessions: readonly DoneSession[];
  readonly onDone: () => void;
}

/** Sets from a file: what is in it, what has to be said about it, and what would come of it. */
export function BringIn(props: BringInProps) {
  const { file, onDone } = props;
  const [opened, setOpened] = useState<{ readonly text: string; readonly log: OpenedLog }>();
  useEffect(() => {
    void file.text().then((text) => setOpened({ text, log: openLogFile(text) }));
  }, [file]);
  if (opened === undefined) return null;
  const { text, log } = opened;
  return (
    <section class="bring" aria-label={words.brought.title(file.name)}>
      <h4>{words.brought.title(file.name)}</h4>
      {log.kind === 'empty' && <p role="alert">{words.brought.empty(file.name)}</p>}
      {log.kind === 'own' && <ReadSets {...props} log={log.log} />}
      {log.kind === 'table' && <TableColumns {...props} text={text} preview={log.preview} />}
      <div class="kept-actions">
        <button type="button" class="wl-button" onClick={onDone}>
          {words.brought.stop}
        </button>
      </div>
    </section>
  );
}
