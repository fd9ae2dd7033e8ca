import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { Database } from '../storage/index.ts';
import type { People } from './People.ts';

/** Something to be told, until it is put away or something else is told. */
export interface Message {
  readonly text: string;
  readonly isWrong?: boolean;
  /** Takes back what was done. */
  readonly undo?: () => void;
}

/** What the parts of the page work with. */
export interface Keeping {
  readonly database: Database;
  readonly people: People;
  readonly say: (message: Message | null) => void;
}

export const KeepingContext = createContext<Keeping | null>(null);

export function useKeeping(): Keeping {
  const keeping = useContext(KeepingContext);
  if (keeping === null) throw new RangeError('useKeeping: there is no page of people around this');
  return keeping;
}
