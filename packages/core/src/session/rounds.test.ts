import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { carriedOver } from './carriedOver.ts';
import { fatigueFor } from './fatigueFor.ts';
import { restSession } from './restSession.ts';
import { roundWait } from './roundWait.ts';
import { together } from './together.ts';

const set = fc.record({
  seconds: fc.integer({ min: 1, max: 120 }),
  restSeconds: fc.integer({ min: 0, max: 300 }),
  goesOn: fc.boolean(),
});

describe('the wait after a round', () => {
  it('is the shortest with which no rest is shorter than wanted, by laying the rounds out', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('pair' as const, 'in-turn' as const),
        fc.integer({ min: 0, max: 60 }),
        set,
        set,
        fc.constantFrom('both', 'first', 'second'),
        (kind, transitionSeconds, one, other, there) => {
          const first = there === 'second' ? undefined : one;
          const second = there === 'first' ? undefined : other;
          const wait = roundWait({ kind, transitionSeconds }, first, second);
          let clock = 0;
          const at = (seconds: number) => {
            clock += seconds;
            return clock;
          };
          const firstEnd = first && at(first.seconds);
          if (first && second) at(transitionSeconds);
          const secondEnd = second && at(second.seconds);
          const roundEnd = clock;
          const again = at(wait);
          // what may not be negative, and is nothing somewhere where the wait is the shortest
          const spare = [wait];
          if (firstEnd !== undefined && first?.goesOn) {
            spare.push(again - firstEnd - first.restSeconds);
            if (second) spare.push(again - roundEnd - transitionSeconds);
            at(first.seconds + transitionSeconds);
          }
          if (secondEnd !== undefined && second?.goesOn) {
            // in a pair the first one's set is no rest for the second
            const rest = (kind === 'pair' ? again : clock) - secondEnd;
            spare.push(rest - second.restSeconds);
          }
          expect(Math.min(...spare)).toBe(0);
        },
      ),
    );
  });

  it('is the rest of the lift that is left', () => {
    const one = { seconds: 60, restSeconds: 120, goesOn: true };
    for (const kind of ['pair', 'in-turn'] as const) {
      const how = { kind, transitionSeconds: 30 };
      expect(roundWait(how, undefined, one)).toBe(120);
      expect(roundWait(how, one, undefined)).toBe(120);
      expect(roundWait(how, undefined, undefined)).toBe(0);
      // the first one's sets are done, so nothing comes before the second one's next
      expect(roundWait(how, { ...one, goesOn: false }, one)).toBe(120);
      // the second one's sets are done: 30 s of way and its 60 s are part of the first one's rest
      expect(roundWait(how, one, { ...one, goesOn: false })).toBe(30);
      expect(roundWait(how, one, { ...one, restSeconds: 600, goesOn: false })).toBe(30);
    }
  });
});

describe('fatigue between exercises', () => {
  const lats = { fast: 0.2, slow: 0.1 };

  it('adds up muscle by muscle', () => {
    expect(together({ lats }, { lats, biceps: lats })).toEqual({
      lats: { fast: 0.4, slow: 0.2 },
      biceps: lats,
    });
    expect(together({ lats }, {})).toEqual({ lats });
  });

  it('shows by six tenths in another exercise', () => {
    const { lats: shown } = carriedOver({ lats });
    expect(shown?.fast).toBeCloseTo(0.12, 12);
    expect(shown?.slow).toBeCloseTo(0.06, 12);
  });

  it('of an exercise is its own, and of all others together carried over', () => {
    const session = new Map([
      ['row', { lats }],
      ['press', { chest: lats }],
      ['curl', { lats: { fast: 0.1, slow: 0 } }],
    ]);
    const { own, carried } = fatigueFor('press', session);
    expect(own).toEqual({ chest: lats });
    expect(carried.lats?.fast).toBeCloseTo(0.6 * 0.3, 12);
    expect(carried.lats?.slow).toBeCloseTo(0.06, 12);
    expect(carried.chest).toBeUndefined();
    expect(fatigueFor('dip', new Map())).toEqual({ own: {}, carried: {} });
  });

  it('rests together, each exercise by itself', () => {
    const session = new Map([['row', { lats }]]);
    const rested = restSession(session, 60).get('row')?.lats;
    expect(rested?.fast).toBeLessThan(0.2);
    expect(rested?.slow).toBe(0.1);
    expect(restSession(session, 0)).toEqual(session);
  });
});
