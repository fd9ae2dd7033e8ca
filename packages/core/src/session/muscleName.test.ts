import { expect, it } from 'vitest';
import type { MuscleId } from '../anatomy/index.ts';
import { muscleName } from './muscleName.ts';

it('names a muscle within a sentence, and one that is not in the table by its id', () => {
  expect(muscleName('rear-deltoid')).toBe('rear deltoid');
  expect(muscleName('third-arm' as MuscleId)).toBe('third-arm');
});
