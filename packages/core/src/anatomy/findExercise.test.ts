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

  it('compares no more of a long text than 100 letters', () => {
    const long = `cable-row${'x'.repeat(91)}`;
    const nearest = (id: string) => {
      const found = findExercise(id);
      return found.kind === 'unknown' ? found.nearest : [];
    };
    expect(nearest(long + 'chin-up'.repeat(100_000))).toEqual(nearest(long));
  });

  it('has nothing to name in an empty list', () => {
    expect(findExercise('dip', [])).toEqual({ kind: 'unknown', id: 'dip', nearest: [] });
  });
});
