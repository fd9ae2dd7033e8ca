import { expect, it } from 'vitest';
import {
  changeLoading,
  type Equipment,
  type EquipmentUse,
  waysToLoad,
} from '../equipment/index.ts';
import { setUpPieces } from './setUpPieces.ts';
import { stripPieces } from './stripPieces.ts';

const kilograms = (value: number) => ({ value, unit: 'kg' }) as const;
const named = { id: 'it', name: 'It' };
const plates = [10, 5].map((value) => ({ weight: kilograms(value), pieces: 4 }));
const addOns = [{ weight: kilograms(1), pieces: 2 }];
const first = kilograms(5);

it.each<[string, Equipment, EquipmentUse]>([
  ['a bar', { kind: 'barbell', bar: kilograms(20), ...named }, { plates }],
  ['handles', { kind: 'handles', handle: kilograms(2), handles: 2, ...named }, { plates }],
  [
    'dumbbells',
    {
      kind: 'fixed',
      form: 'dumbbell',
      weights: [{ weight: kilograms(10), pieces: 2 }],
      addOns,
      ...named,
    },
    {},
  ],
  [
    'a stack',
    {
      kind: 'stack',
      first,
      rest: [{ weight: first, pieces: 2 }],
      addOns,
      pulleyRatio: 1,
      ...named,
    },
    {},
  ],
  [
    'a body with help',
    { kind: 'body', belt: {}, assistance: [kilograms(20)], ...named },
    { plates, bodyWeight: kilograms(80) },
  ],
])('counts from nothing and back as changeLoading does: %s', (_, equipment, use) => {
  const answer = waysToLoad(equipment, use, {}, 2);
  if (answer.kind === 'none') throw new Error(answer.message);
  for (const way of answer.ways) {
    expect(setUpPieces(way)).toBe(changeLoading('nothing', way.loading).pieces);
    expect(stripPieces(way)).toBe(changeLoading(way.loading, 'nothing').pieces);
  }
});
