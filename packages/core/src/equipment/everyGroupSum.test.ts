import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { everyChoice } from './everyChoice.testing.ts';
import { everyGroupSum } from './everyGroupSum.ts';

/** Small numbers, so that limits are hit exactly. */
const kinds = fc.array(
  fc.record({
    mass: fc.integer({ min: 1, max: 6 }),
    room: fc.integer({ min: 0, max: 4 }),
    groups: fc.integer({ min: 0, max: 3 }),
  }),
  { maxLength: 3 },
);
const between = (min: number, max: number) => fc.integer({ min, max });
/** Each of them leaves out something of what the others let through. */
const range = fc.record({
  leastMass: between(0, 6),
  mostMass: between(4, 16),
  mostRoom: between(2, 12),
  mostGroups: between(0, 5),
});

describe('everyGroupSum', () => {
  it('finds the choices within all four limits, and those only', () => {
    fc.assert(
      fc.property(kinds, range, (some, { leastMass, mostMass, mostRoom, mostGroups }) => {
        const within = everyChoice(some).filter(
          ({ mass, groups, room }) =>
            mass >= leastMass && mass <= mostMass && room <= mostRoom && groups <= mostGroups,
        );
        const found = everyGroupSum(some, { leastMass, mostMass, mostRoom, mostGroups }, 100);
        expect(found).toEqual(within);
      }),
      { numRuns: 300 },
    );
  });

  it('gives up when there are more than may be listed', () => {
    const range = { leastMass: 0, mostMass: 99, mostRoom: 99, mostGroups: 99 };
    // 0, 1, 2 or 3 groups
    const one = [{ mass: 1, room: 1, groups: 3 }];
    expect(everyGroupSum(one, range, 4)).toHaveLength(4);
    expect(everyGroupSum(one, range, 3)).toBeUndefined();
  });
});
