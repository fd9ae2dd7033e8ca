import { inSentence } from '@windlass/core/basis';
import type { Suggestion } from '@windlass/core/exchange';
import { said } from './words.ts';

/** An exercise with its set-ups. */
export function nameOf({ exercise, setUps }: Suggestion): string {
  return said.withSetUps(
    exercise.name,
    setUps.map(({ name }) => inSentence(name)),
  );
}
