import { useLayoutEffect, useRef } from 'preact/hooks';
import { eraseAll, storageWords } from '../storage/index.ts';
import { forgetSettings } from './forgetSettings.ts';
import { useKeeping } from './Keeping.ts';
import { words } from './words.ts';

interface EraseProps {
  readonly onBackup: () => void;
  readonly onDone: () => void;
}

/** Asks before everything goes, and says what that is. */
export function Erase({ onBackup, onDone }: EraseProps) {
  const { database, people, say } = useKeeping();
  const heading = useRef<HTMLHeadingElement>(null);
  useLayoutEffect(() => heading.current?.focus(), []);
  const parts = (
    [
      ['people', people.people.length],
      ['gyms', people.gyms.length],
      ['sessions', people.sessions],
      ['running', people.running.length],
      ['broken', people.broken.length],
    ] as const
  )
    .filter(([, count]) => count > 0)
    .map(([what, count]) => words.erase[what](count));
  const erase = async () => {
    const erased = await eraseAll(database);
    if (erased.kind === 'failed') {
      return say({ text: storageWords.failed(erased), isWrong: true });
    }
    forgetSettings();
    onDone();
    say({ text: words.said.erased });
  };
  return (
    <section class="ask-before" aria-labelledby="erase-title">
      <h3 id="erase-title" ref={heading} tabIndex={-1}>
        {words.erase.title}
      </h3>
      <p>{words.erase.goes(parts.length > 0 ? parts : [words.erase.nothing])}</p>
      <div class="kept-actions">
        <button type="button" class="wl-button" onClick={onBackup}>
          {words.kept.backup}
        </button>
        <button type="button" class="wl-button" data-kind="stop" onClick={erase}>
          {words.erase.now}
        </button>
        <button type="button" class="wl-button" onClick={onDone}>
          {words.cancel}
        </button>
      </div>
    </section>
  );
}
