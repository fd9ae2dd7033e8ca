import { freshId } from './freshId.ts';

/** What a change is marked with. */
export interface Stamp {
  /** Name of the state that the change makes. */
  readonly revision: string;
  /** When it was made, in universal time. */
  readonly at: string;
}

/** The mark for a change that is made now. */
export function stampNow(): Stamp {
  return { revision: freshId(), at: new Date().toISOString() };
}
