import { describe, expect, it } from 'vitest';
import { examples } from './examples.ts';
import { moveLift } from './liftEdits.ts';
import { placeInPlan } from './placeInPlan.ts';
import { setAt } from './tree.ts';

const planned = examples['pull-day'];
const places = (draft: Parameters<typeof placeInPlan>[0]) =>
  [0, 1, 2].map((place) => placeInPlan(draft, planned, place));

describe('placeInPlan', () => {
  it('is the same place while nothing or only a field of a lift changes', () => {
    expect(places(planned)).toEqual([0, 1, 2]);
    expect(places(setAt(planned, ['intent', 'lifts', 1, 'sets'], 'x'))).toEqual([0, 1, 2]);
  });

  it('follows lifts that were moved or have moved up', () => {
    expect(places(moveLift(planned, 0, 1))).toEqual([1, 0, 2]);
    expect(places(setAt(planned, ['intent', 'lifts', 0], undefined))).toEqual([1, 2, -1]);
  });

  it('is none for a lift that the plan does not know', () => {
    expect(placeInPlan(setAt(planned, ['intent', 'lifts', 3], {}), planned, 3)).toBe(-1);
  });
});
