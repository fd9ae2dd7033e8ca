import type { Suggestion } from '@windlass/core/exchange';
import { inSentence } from '../language.ts';
import { said } from './words.ts';

/** An exercise with its set-ups. */
export function nameOf({ exercise, setUps }: Suggestion): string {
  return said.withSetUps(
    exercise.name,
    setUps.map(({ name }) => inSentence(name)),
  );
}
