import { exercises } from '@windlass/core/anatomy';
import { rememberLifts } from '@windlass/core/session';
import fc from 'fast-check';
import { renderToString } from 'preact-render-to-string';
import { expect, it } from 'vitest';
import gym from '../../../examples/boathouse/gym.json';
import { PlannerApp } from './PlannerApp.tsx';
import { exampleIds, examples } from './state/examples.ts';
import { planFrom } from './state/planFrom.ts';
import { readDraft } from './state/readDraft.ts';
import { type Json, setAt } from './state/tree.ts';

const places = gym.equipment.map(({ id }) => id);
const known = exampleIds.flatMap((id) =>
  examples[id].client.sets.map(({ exercise, equipment }) => ({ exercise, equipment })),
);
const pair = fc.oneof(
  fc.constantFrom(...known),
  fc.record({
    exercise: fc.constantFrom(...exercises.map(({ id }) => id), 'nothing-of-the-kind'),
    equipment: fc.constantFrom(...places, 'not-there'),
  }),
);
const lift = fc
  .record({
    pair,
    fewest: fc.integer({ min: 1, max: 40 }),
    width: fc.integer({ min: 0, max: 8 }),
    tempo: fc.constantFrom('3-0-2-0', '30X0', '10-0-10-0', '1-0-1-0'),
    sets: fc.integer({ min: 1, max: 10 }),
    restSeconds: fc.integer({ min: 0, max: 1800 }),
  })
  .map(({ pair, fewest, width, ...rest }) => ({
    ...pair,
    ...rest,
    window: { minReps: fewest, maxReps: fewest + width },
  }));
const change = fc.record({
  lifts: fc.array(lift, { minLength: 1, maxLength: 3 }),
  unit: fc.constantFrom('kg', 'lb'),
  date: fc.constantFrom('2027-03-01', '2027-03-15', '2029-01-01'),
  pressure: fc.constantFrom('not-raised', 'treated', 'untreated', 'unknown'),
});

it('shows whatever can be planned', () => {
  fc.assert(
    fc.property(fc.constantFrom(...exampleIds), change, (id, { lifts, unit, date, pressure }) => {
      const intent = { date, unit, changeSeconds: 60, lifts };
      const base: Json = { ...examples[id], intent };
      const draft = setAt(base, ['client', 'health', 'bloodPressure'], { status: pressure });
      const read = readDraft(draft);
      expect(read.ok).toBe(true);
      if (!read.ok) return;
      const start = planFrom(draft, read.value, rememberLifts());
      const markup = renderToString(<PlannerApp start={start} />);
      expect(markup).not.toMatch(/NaN|undefined|\[object/);
    }),
    { numRuns: 60 },
  );
});
