import type { Problem } from '@windlass/core/basis';
import type { Gym } from '@windlass/core/equipment';
import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { Json, Path } from '../state/tree.ts';

/** What every question on the page is asked with. */
export interface Asking {
  readonly draft: Json;
  readonly problems: readonly Problem[];
  /** Changes one field; `undefined` takes it away. */
  readonly set: (path: Path, value: Json | undefined) => void;
  /** Changes several things at once. */
  readonly change: (to: (draft: Json) => Json) => void;
  /** The gym as it was last understood. */
  readonly gym: Gym;
}

export const AskingContext = createContext<Asking | null>(null);

export function useAsking(): Asking {
  const asking = useContext(AskingContext);
  if (asking === null) throw new RangeError('useAsking: there is no planner around this question');
  return asking;
}
