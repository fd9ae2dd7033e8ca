import { describe, expect, it } from 'vitest';
import { exercises } from './exercises.ts';
import { findExercise } from './findExercise.ts';

describe('findExercise', () => {
  it('finds every exercise by its id', () => {
    for (const exercise of exercises) {
      expect(findExercise(exercise.id)).toEqual({ kind: 'found', exercise });
    }
  });

  it('names near misses of an id it does not know, nearest first', () => {
    const found = findExercise('chinup');
    expect(found).toMatchObject({ kind: 'unknown', id: 'chinup' });
    expect(found.kind === 'unknown' && found.nearest[0]).toBe('chin-up');
  });

  it('still names the exercise when its first, middle or last letter is left out', () => {
    for (const { id } of exercises) {
      for (const at of [0, Math.floor(id.length / 2), id.length - 1]) {
        const typed = id.slice(0, at) + id.slice(at + 1);
        const found = findExercise(typed);
        if (found.kind === 'found') continue;
        expect(found.nearest, typed).toContain(id);
      }
    }
  });

  it('has nothing to name in an empty list', () => {
    expect(findExercise('dip', [])).toEqual({ kind: 'unknown', id: 'dip', nearest: [] });
  });
});
