import { describe, expect, it } from 'vitest';
import type { CapacityStep } from './CapacityStep.ts';
import { capacityTrace } from './capacityTrace.ts';

const lats = { lats: 1 };
const lift: CapacityStep = {
  kind: 'reps',
  shares: lats,
  reps: 10,
  secondsPerRep: 4,
  costPerRep: 0.03,
};

describe('capacityTrace', () => {
  it('is one fresh point without steps', () => {
    expect(capacityTrace({ shares: lats, steps: [] })).toEqual({
      points: [{ seconds: 0, capacity: 1 }],
      stepStarts: [0],
      crossings: [],
      end: {},
    });
  });

  it('passes the lines on the way down and on the way up', () => {
    const trace = capacityTrace({
      shares: lats,
      steps: [lift, { kind: 'rest', seconds: 120 }],
      lines: [
        { id: 'hold', capacity: 0.75 },
        { id: 'lift', capacity: 0.85 },
      ],
    });
    // Ten reps of 4 s at 0.03: 0.85 is passed after 5 reps (20 s), 0.75 after 8⅓ reps (33⅓ s).
    // At 40 s fast is 0.24 and slow 0.06; 0.75 is back when fast is 0.19, 0.85 when it is 0.09:
    // after ln(0.24/0.19)/0.01365 = 17.115 s and ln(0.24/0.09)/0.01365 = 71.856 s.
    const expected = [
      { line: 'lift', seconds: 20, direction: 'down' },
      { line: 'hold', seconds: 33.333, direction: 'down' },
      { line: 'hold', seconds: 57.115, direction: 'up' },
      { line: 'lift', seconds: 111.856, direction: 'up' },
    ];
    expect(trace.crossings).toHaveLength(4);
    trace.crossings.forEach((crossing, index) => {
      expect(crossing).toMatchObject({
        line: expected[index]?.line,
        direction: expected[index]?.direction,
      });
      expect(crossing.seconds).toBeCloseTo(expected[index]?.seconds ?? Number.NaN, 2);
    });
    expect(trace.stepStarts).toEqual([0, 40, 160]);
    expect(trace.points.at(-1)?.seconds).toBe(160);
  });

  it('shows what an isolation lift takes from a compound that shares its muscle', () => {
    const pull = { lats: 0.5, biceps: 0.5 };
    const curls: CapacityStep = { ...lift, shares: { biceps: 1 } };
    const trace = capacityTrace({ shares: pull, steps: [curls] });
    // Curls take 0.3 from the biceps, half of the pull: 0.15.
    expect(trace.points.at(-1)?.capacity).toBeCloseTo(0.85, 12);
  });

  it('falls through a hold without a break in time', () => {
    const trace = capacityTrace({
      shares: lats,
      steps: [lift, { kind: 'sustain', shares: lats, targetLoad: 0.6, seconds: 15 }],
    });
    trace.points.reduce((before, point) => {
      expect(point.seconds).toBeGreaterThan(before.seconds);
      expect(point.capacity).toBeLessThan(before.capacity);
      return point;
    });
    expect(trace.points.at(-1)?.seconds).toBe(55);
  });
});
