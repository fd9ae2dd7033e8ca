import { expect, it } from 'vitest';
import { type Barbell, reachableLoads } from '../equipment/index.ts';
import { kg } from '../load/index.ts';
import { draftStep } from './draftStep.ts';
import { rampSettings } from './rampSettings.ts';

it('is a share of the work load, and of what the work load is a share of', () => {
  const equipment: Barbell = {
    kind: 'barbell',
    id: 'bar',
    name: 'Bar',
    bar: { value: 20, unit: 'kg' },
  };
  const plates = [{ weight: { value: 10, unit: 'kg' }, pieces: 4 }] as const;
  const list = reachableLoads(equipment, { plates });
  if (list.kind === 'none') throw new Error(list.message);
  const [empty, forty = empty, sixty = empty] = list.loads;
  const question = { equipment, work: kg(60), workShare: 0.75, experience: 'trained' } as const;
  const draft = draftStep(forty, empty, sixty, rampSettings(question));
  expect(draft.shareOfWork).toBeCloseTo(2 / 3, 12);
  expect(draft.shareOfMax).toBeCloseTo(0.5, 12);
  expect(draft.change.pieces).toBe(2);
});
