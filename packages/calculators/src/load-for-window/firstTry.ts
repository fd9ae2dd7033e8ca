import { loadFromValue } from '@windlass/core/load';
import type { Caution } from '@windlass/core/safety';
import { loadWords } from '../shared/loadWords.ts';
import { PROJECT_CHOICE } from '../shared/sources.ts';
import type { WindowInput, WindowResult } from './compute.ts';

/** A note where the load is well above everything that was done: try the careful one first. */
export function firstTry(input: WindowInput, { answer }: WindowResult): readonly Caution[] {
  const heaviest = Math.max(...input.sets.map(({ load }) => loadFromValue(load)));
  const { best, careful } = answer;
  if (best.choice.shown <= heaviest * 1.1) return [];
  const start =
    careful && careful.choice.load < best.choice.load
      ? `Begin with ${loadWords(careful.choice.shown, input.show)}`
      : 'Begin lighter';
  return [
    {
      id: 'heavier-than-anything-done',
      level: 'caution',
      what: 'Heavier than any set that was given.',
      why: 'From many light reps to a few heavy ones people differ widely, and the form of a heavy rep has to be learned.',
      instead: `${start}, count, enter that set here, and go by the new answer.`,
      ask: ['coach'],
      sources: [PROJECT_CHOICE],
    },
  ];
}
