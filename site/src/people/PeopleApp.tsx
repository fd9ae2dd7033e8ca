import { useMemo, useState } from 'preact/hooks';
import { storageWords } from '../storage/index.ts';
import { BrokenList } from './BrokenList.tsx';
import { GymList } from './GymList.tsx';
import { type Keeping, KeepingContext, type Message } from './Keeping.ts';
import { KeptHere } from './KeptHere.tsx';
import { MessageLine } from './MessageLine.tsx';
import { PersonList } from './PersonList.tsx';
import { usePeople } from './usePeople.ts';
import { words } from './words.ts';

/** The page of people and gyms: what is kept, or why nothing can be. */
export function PeopleApp() {
  const [message, say] = useState<Message | null>(null);
  const [state, tryAgain] = usePeople(() => say({ text: words.said.lost, isWrong: true }));
  const keeping = useMemo<Keeping | null>(
    () => (state.kind === 'open' ? { database: state.database, people: state.people, say } : null),
    [state],
  );
  return (
    <>
      {message !== null && <MessageLine message={message} onDismiss={() => say(null)} />}
      {state.kind === 'opening' && (
        <p class="soft" aria-live="polite">
          {words.opening}
        </p>
      )}
      {state.kind === 'failed' && (
        <div class="say" data-wrong="true">
          <p role="alert">{storageWords.failed(state.failure)}</p>
          <button type="button" class="wl-button" onClick={tryAgain}>
            {words.again}
          </button>
        </div>
      )}
      {keeping !== null && (
        <KeepingContext.Provider value={keeping}>
          {keeping.people.broken.length > 0 && <BrokenList broken={keeping.people.broken} />}
          <PersonList />
          <GymList />
          <KeptHere />
        </KeepingContext.Provider>
      )}
    </>
  );
}
