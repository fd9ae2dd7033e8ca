import fc from 'fast-check';
import {
  type Equipment,
  type EquipmentUse,
  reachableLoads,
  waysToLoad,
} from '../../equipment/index.ts';
import type { Load } from '../../load/index.ts';
import type { RampProblem } from '../RampChoice.ts';

const kilograms = (value: number) => ({ value, unit: 'kg' }) as const;
const pounds = (value: number) => ({ value, unit: 'lb' }) as const;
const bar = { kind: 'barbell', id: 'bar', name: 'Bar', bar: kilograms(20) } as const;

const gear: readonly (readonly [Equipment, EquipmentUse])[] = [
  [bar, { plates: [20, 10, 5].map((value) => ({ weight: kilograms(value), pieces: 4 })) }],
  [bar, { plates: [15, 10, 5, 2.5].map((value) => ({ weight: kilograms(value), pieces: 2 })) }],
  [
    bar,
    {
      plates: [
        { weight: kilograms(10), pieces: 4 },
        { weight: pounds(25), pieces: 2 },
        { weight: pounds(10), pieces: 2 },
      ],
    },
  ],
  [
    {
      kind: 'stack',
      id: 'row',
      name: 'Row',
      first: kilograms(5),
      rest: [{ weight: kilograms(5), pieces: 5 }],
      addOns: [{ weight: kilograms(2.5), pieces: 2 }],
      pulleyRatio: 1,
    },
    {},
  ],
  [
    {
      kind: 'fixed',
      form: 'dumbbell',
      id: 'rack',
      name: 'Rack',
      weights: [4, 6, 8, 12, 14, 20].map((value) => ({ weight: kilograms(value), pieces: 2 })),
      addOns: [{ weight: kilograms(1), pieces: 2 }],
    },
    {},
  ],
];

/** Ramps of one to three targets on small equipment, with all loadings, for exhaustive search. */
export const smallRamp: fc.Arbitrary<RampProblem> = fc
  .record({
    gear: fc.constantFrom(...gear),
    workAt: fc.double({ min: 0, max: 0.999, noNaN: true }),
    shares: fc.array(fc.integer({ min: 25, max: 95 }), { minLength: 1, maxLength: 3 }),
    pieceCost: fc.constantFrom(0, 20, 225, 2000),
    growthCost: fc.constantFrom(0, 10_000),
    withAbove: fc.boolean(),
  })
  .map(({ gear: [equipment, use], workAt, shares, pieceCost, growthCost, withAbove }) => {
    const loads = reachableLoads(equipment, use);
    const ways = waysToLoad(equipment, use, {}, 10);
    if (loads.kind === 'none' || ways.kind === 'none') throw new Error('no loads');
    const pick = 1 + Math.floor(workAt * (loads.loads.length - 2));
    const work = loads.loads[pick]?.load ?? loads.loads[0].load;
    const next = loads.loads[pick + 1]?.load;
    return {
      targets: shares
        .toSorted((a, b) => a - b)
        .map((share) => Math.round((share * work) / 100) as Load),
      ways: ways.ways.filter(({ load }) => load < work),
      workWays: ways.ways.filter(({ load }) => load === work),
      work,
      pieceCost,
      growthCost,
      ...(withAbove && next !== undefined
        ? { above: { target: next, ways: ways.ways.filter(({ load }) => load === next) } }
        : {}),
    };
  });
