import { expect, it } from 'vitest';
import type { Stage } from '../extension/index.ts';
import { stageWords } from './stageWords.ts';

it.each([
  [{ kind: 'lift' }, 'lift until a rep cannot be finished'],
  [
    { kind: 'hold', at: 'stretched', maxSeconds: 20 },
    'hold in the stretched position, 20 s at most',
  ],
  [{ kind: 'hold', at: 'middle', maxSeconds: 5 }, 'hold in the middle position, 5 s at most'],
  [
    { kind: 'hold', at: 'contracted', maxSeconds: 9 },
    'hold in the contracted position, 9 s at most',
  ],
  [{ kind: 'lower', secondsEach: 6, maxLowerings: 1 }, 'lower once, over 6 s'],
  [{ kind: 'lower', secondsEach: 5, maxLowerings: 3 }, 'lower 3 times at most, each over 5 s'],
  [{ kind: 'part-range', maxReps: 4 }, '4 reps at most through the long half of the range'],
  [{ kind: 'lighter', loadShare: 0.8 }, 'take 20 % off and lift on without rest'],
  [{ kind: 'lighter', loadShare: 0.67 }, 'take 33 % off and lift on without rest'],
  [{ kind: 'pause', seconds: 15 }, 'pause 15 s and lift on'],
  [{ kind: 'assisted', reps: 1 }, 'one rep with a partner’s help'],
  [{ kind: 'assisted', reps: 2 }, '2 reps with a partner’s help'],
] satisfies [Stage, string][])('%j is said as it is to be done', (stage, words) => {
  expect(stageWords(stage)).toBe(words);
});
