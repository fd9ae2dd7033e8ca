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
});

describe('the wait after a round', () => {
  it('makes no rest shorter than wanted, and no longer than one of them or the way asks for', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('pair' as const, 'in-turn' as const),
        fc.integer({ min: 0, max: 60 }),
        set,
        set,
        (kind, transitionSeconds, first, second) => {
          const wait = roundWait({ kind, transitionSeconds }, first, second);
          // the first rests on the way over, while the second works, and after the round
          const spare = [
            transitionSeconds + second.seconds + wait - first.restSeconds,
            // the second one after the round and, where other muscles work, during the first one's set
            wait +
              (kind === 'in-turn' ? first.seconds + transitionSeconds : 0) -
              second.restSeconds,
            wait - transitionSeconds,
          ];
          expect(Math.min(...spare)).toBe(0);
        },
      ),
    );
  });

  it('is the rest of the lift that is left', () => {
    const one = { seconds: 60, restSeconds: 120 };
    for (const kind of ['pair', 'in-turn'] as const) {
      const how = { kind, transitionSeconds: 30 };
      expect(roundWait(how, undefined, one)).toBe(120);
      expect(roundWait(how, one, undefined)).toBe(120);
      expect(roundWait(how, undefined, undefined)).toBe(0);
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
