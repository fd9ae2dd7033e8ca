import { expect, it } from 'vitest';
import { chainNeeds } from './chainNeeds.ts';
import { benchPress, chinUp, deadHang } from './exercises.testing.ts';

it('lists what has to be there, stage by stage', () => {
  const chain = [
    { kind: 'lift' },
    { kind: 'lighter', loadShare: 0.8 },
    { kind: 'assisted', reps: 1 },
    { kind: 'lower', secondsEach: 5, maxLowerings: 3 },
  ] as const;
  expect(chainNeeds(chain, benchPress).map(({ kind, stage }) => [kind, stage])).toEqual([
    ['stops-or-partner', null],
    ['quick-change', 1],
    ['partner', 2],
    ['way-back', 3],
  ]);
  expect(chainNeeds([{ kind: 'lift' }], deadHang)).toMatchObject([
    { kind: 'partner', stage: null },
  ]);
});

it('needs nothing for a single lowering of a lift that can be left', () => {
  const once = [{ kind: 'lift' }, { kind: 'lower', secondsEach: 6, maxLowerings: 1 }] as const;
  expect(chainNeeds(once, chinUp)).toEqual([]);
});
