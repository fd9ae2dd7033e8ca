import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Barbell,
  type Handling,
  type Loading,
  type Plate,
  type PlateStock,
  reachableLoads,
} from '../equipment/index.ts';
import { planRamp } from './planRamp.ts';

const kilograms = (value: number) => ({ value, unit: 'kg' }) as const;
const bar: Barbell = { kind: 'barbell', id: 'bar', name: 'Bar', bar: kilograms(20) };

const stock: fc.Arbitrary<readonly PlateStock[]> = fc
  .uniqueArray(fc.constantFrom(25, 20, 15, 10, 5, 2.5, 1.25), { minLength: 2, maxLength: 6 })
  .chain((weights) =>
    fc
      .array(fc.integer({ min: 2, max: 8 }), {
        minLength: weights.length,
        maxLength: weights.length,
      })
      .map((pieces) =>
        weights.map((value, index) => ({ weight: kilograms(value), pieces: pieces[index] ?? 2 })),
      ),
  );

/** Does what a handling says with the plates on the bar, outermost first. */
function replay(ends: Readonly<Record<'left' | 'right', Plate[]>>, { steps }: Handling): void {
  for (const step of steps) {
    if (!('plate' in step) || (step.place !== 'left' && step.place !== 'right')) {
      throw new Error('not a step on a bar');
    }
    if (step.action === 'put-on') ends[step.place].push(step.plate);
    else expect(ends[step.place].pop()).toEqual(step.plate);
  }
}

function platesOf(loading: Loading, place: 'left' | 'right'): readonly Plate[] {
  if (loading.kind !== 'plates') throw new Error('not on a bar');
  return loading.stacks.find((stack) => stack.place === place)?.plates ?? [];
}

describe('planRamp', () => {
  it('climbs strictly to below the work load, and its instructions make every load', () => {
    fc.assert(
      fc.property(
        stock,
        fc.double({ min: 0.05, max: 1, noNaN: true }),
        fc.double({ min: 0.6, max: 1, noNaN: true }),
        fc.boolean(),
        (plates, height, workShare, isNew) => {
          const list = reachableLoads(bar, { plates });
          if (list.kind === 'none') throw new Error(list.message);
          const work = list.loads[Math.floor(height * (list.loads.length - 1))] ?? list.loads[0];
          const plan = planRamp({
            equipment: bar,
            use: { plates },
            work: work.load,
            workShare,
            experience: isNew ? 'new' : 'trained',
          });
          if (plan.kind === 'none') throw new Error(plan.message);
          if (plan.kind === 'no-ramp') return;
          const loads = plan.steps.map(({ load }) => load.load);
          expect(loads.length).toBeGreaterThan(0);
          expect(loads).toEqual([...new Set(loads)].sort((a, b) => a - b));
          expect(loads.at(-1)).toBeLessThan(work.load);
          const reachable = new Set(list.loads.map(({ load }) => load));
          expect(loads.every((load) => reachable.has(load))).toBe(true);
          const reps = plan.steps.map((step) => step.reps);
          expect(reps).toEqual(reps.toSorted((a, b) => b - a));
          expect(Math.min(...reps)).toBeGreaterThanOrEqual(1);
          expect(plan.capacityKept.likely).toBeGreaterThanOrEqual(0.97);

          const ends = { left: [] as Plate[], right: [] as Plate[] };
          for (const { change, load } of plan.steps) {
            replay(ends, change);
            expect(ends.left).toEqual(platesOf(load.loading, 'left'));
            expect(ends.right).toEqual(platesOf(load.loading, 'right'));
          }
          replay(ends, plan.changeToWork);
          expect(ends.left).toEqual(platesOf(plan.work.loading, 'left'));
          replay(ends, plan.stripDown);
          expect(ends).toEqual({ left: [], right: [] });
          const moved = [
            ...plan.steps.map(({ change }) => change),
            plan.changeToWork,
            plan.stripDown,
          ];
          expect(plan.piecesHandled).toBe(moved.reduce((sum, { pieces }) => sum + pieces, 0));
        },
      ),
      { numRuns: 150 },
    );
  });
});
