import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import { type Database, type Failure, onChange, openDatabase } from '../storage/index.ts';
import type { People } from './People.ts';
import { readPeople } from './readPeople.ts';

/** What the page has to show. */
export type PeopleState =
  | { readonly kind: 'opening' }
  | { readonly kind: 'failed'; readonly failure: Failure }
  | { readonly kind: 'open'; readonly database: Database; readonly people: People };

/**
 * Opens the database and follows it: a change in this tab or another is shown at once.
 *
 * @returns the state, and a way to try again after a failure.
 */
export function usePeople(onLost: () => void): readonly [PeopleState, () => void] {
  const [state, setState] = useState<PeopleState>({ kind: 'opening' });
  const [attempts, setAttempts] = useState(0);
  const lost = useRef(onLost);
  lost.current = onLost;

  useEffect(() => {
    let isWanted = true;
    let close = () => {};
    void openDatabase({ onLost: () => lost.current() }).then(async (opened) => {
      if (!isWanted) return;
      if (opened.kind === 'failed') return setState({ kind: 'failed', failure: opened });
      const { database } = opened;
      const read = async () => {
        const answer = await readPeople(database);
        if (!isWanted) return;
        if (answer.kind === 'failed') return setState({ kind: 'failed', failure: answer });
        setState({ kind: 'open', database, people: answer.people });
      };
      const stop = onChange(read);
      close = () => {
        stop();
        database.close();
      };
      await read();
    });
    return () => {
      isWanted = false;
      close();
    };
  }, [attempts]);

  return [state, useCallback(() => setAttempts((count) => count + 1), [])];
}
