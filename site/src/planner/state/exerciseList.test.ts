import { readGym } from '@windlass/core/schema';
import { describe, expect, it } from 'vitest';
import gymFile from '../../../../examples/boathouse/gym.json';
import { exerciseList, type MovementGroup } from './exerciseList.ts';

const read = readGym(gymFile);
const gym = read.ok ? read.value.equipment : [];
const ids = (groups: readonly MovementGroup[]) =>
  groups.flatMap(({ exercises }) => exercises.map(({ id }) => id));

describe('exerciseList', () => {
  it('has what the gym can load first, and everything once', () => {
    const { loadable, others, count } = exerciseList('', gym);
    const all = [...ids(loadable), ...ids(others)];
    expect(ids(loadable)).toContain('chin-up');
    expect(ids(others)).toContain('kettlebell-swing');
    expect(ids(others)).toContain('band-row');
    expect(new Set(all).size).toBe(count);
  });

  it('finds by the beginnings of words of the name, the movement and the muscles', () => {
    const found = (search: string) => {
      const { loadable, others } = exerciseList(search, gym);
      return [...ids(loadable), ...ids(others)];
    };
    expect(found('chin')).toContain('chin-up');
    expect(found('ONE-ARM row')).toContain('one-arm-dumbbell-row');
    expect(found('hinge')).toContain('romanian-deadlift');
    expect(found('quadriceps')).toContain('leg-extension');
    expect(found('zither')).toEqual([]);
  });

  it('leaves out what is held or carried for seconds', () => {
    expect(ids(exerciseList('plank', gym).loadable)).not.toContain('plank');
    expect(ids(exerciseList('carry', gym).loadable)).not.toContain('farmer-carry');
  });

  it('counts nothing as loadable in a gym with a band alone', () => {
    const band = [{ kind: 'band', id: 'band', name: 'Band' }] as const;
    expect(exerciseList('', band).loadable).toEqual([]);
  });
});
