import { useRef, useState } from 'preact/hooks';
import { storageWords } from '../../storage/index.ts';
import { BrokenList } from '../BrokenList.tsx';
import type { Person } from '../People.ts';
import { BringIn } from './BringIn.tsx';
import { SaveLog } from './SaveLog.tsx';
import { SessionView } from './SessionView.tsx';
import { useLog } from './useLog.ts';
import { words } from './words.ts';

const SHOWN_AT_FIRST = 8;

/** A person's log: the sessions done, the latest first, and files out of it and into it. */
export function LogView({ person }: { readonly person: Person }) {
  const log = useLog(person.record.id);
  const input = useRef<HTMLInputElement>(null);
  const [file, setFile] = useState<File | null>(null);
  const [isWhole, setWhole] = useState(false);
  if (log === undefined) return <p class="soft">{words.reading}</p>;
  if (log.kind === 'failed') return <p role="alert">{storageWords.failed(log)}</p>;
  const sessions = log.records.toReversed();
  const shown = isWhole ? sessions : sessions.slice(0, SHOWN_AT_FIRST);
  const hidden = sessions.length - shown.length;
  return (
    <section class="log" aria-label={`${words.title}: ${person.name}`}>
      <h4>{words.title}</h4>
      {log.broken.length > 0 && <BrokenList broken={log.broken} />}
      {sessions.length === 0 && <p>{words.empty}</p>}
      {shown.map((session) => (
        <SessionView key={session.id} session={session} />
      ))}
      {hidden > 0 && (
        <button type="button" class="wl-button" onClick={() => setWhole(true)}>
          {words.more(hidden)}
        </button>
      )}
      <div class="kept-actions">
        {sessions.length > 0 && <SaveLog name={person.name} sessions={log.records} />}
        <button type="button" class="wl-button" onClick={() => input.current?.click()}>
          {words.bring}
        </button>
      </div>
      <p class="soft">{words.bringHelp}</p>
      <input
        ref={input}
        type="file"
        accept=".csv,.tsv,.txt,.json,text/csv,text/plain,application/json"
        aria-label={words.bring}
        hidden
        onChange={({ currentTarget }) => {
          setFile(currentTarget.files?.[0] ?? null);
          currentTarget.value = '';
        }}
      />
      {file !== null && (
        <BringIn
          key={`${file.name}/${file.lastModified}/${file.size}`}
          file={file}
          person={person}
          sessions={log.records}
          onDone={() => setFile(null)}
        />
      )}
    </section>
  );
}
