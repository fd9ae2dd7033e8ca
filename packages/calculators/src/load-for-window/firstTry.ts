import { loadFromValue } from '@windlass/core/load';
import type { Caution } from '@windlass/core/safety';
import { loadWords } from '../shared/loadWords.ts';
import { PROJECT_CHOICE } from '../shared/sources.ts';
import type { WindowInput, WindowResult } from './compute.ts';
import { said } from './words.ts';

/** A note where the load is well above everything that was done: try the careful one first. */
export function firstTry(input: WindowInput, { answer }: WindowResult): readonly Caution[] {
  const heaviest = Math.max(...input.sets.map(({ load }) => loadFromValue(load)));
  const { best, careful } = answer;
  if (best.choice.shown <= heaviest * 1.1) return [];
  const start =
    careful && careful.choice.load < best.choice.load
      ? said.heavier.beginWith(loadWords(careful.choice.shown, input.show))
      : said.heavier.beginLighter;
  return [
    {
      id: 'heavier-than-anything-done',
      level: 'caution',
      what: said.heavier.what,
      why: said.heavier.why,
      instead: said.heavier.instead(start),
      ask: ['coach'],
      sources: [PROJECT_CHOICE],
    },
  ];
}
