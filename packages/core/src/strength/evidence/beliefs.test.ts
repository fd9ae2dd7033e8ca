import { describe, expect, it } from 'vitest';
import { kg } from '../../load/index.ts';
import { generalCurve } from '../generalCurve.ts';
import { priorFor } from '../priorFor.ts';
import type { StrengthPosterior } from '../StrengthPosterior.ts';
import { strengthFrom } from '../strengthFrom.ts';
import { posteriorOf, stateOf } from './beliefs.ts';

const posterior = strengthFrom({
  sets: [{ load: kg(100), reps: 5, end: { kind: 'failure' }, day: 2, secondsPerRep: 3 }],
  prior: priorFor(generalCurve),
  today: 2.5,
  cells: { columns: 12, rows: 6 },
}) as StrengthPosterior;

describe('a stored posterior', () => {
  it('holds all of the working state, and the state all of it', () => {
    const state = stateOf(posterior);
    const again = posteriorOf(state, posterior.alpha, posterior.binding);
    const close = (chances: readonly number[]) =>
      chances.map((one) => expect.closeTo(one, 12) as number);
    expect(again).toEqual({
      ...posterior,
      usual: close(posterior.usual),
      today: close(posterior.today),
      session: {
        ...posterior.session,
        before: { ...posterior.session.before, chances: close(posterior.session.before.chances) },
      },
    });
    expect([state.day, state.sets.length]).toEqual([2, 1]);
  });

  it('reads a chance of 0 as next to nothing, and not as no number', () => {
    const [, ...others] = posterior.usual;
    const { usual } = stateOf({ ...posterior, usual: [0, ...others] });
    expect(Number.isFinite(usual.logs[0])).toBe(true);
    expect(usual.logs[0]).toBeLessThan(-600);
    // 12 by 6 cells, each with its own
    others.forEach((one, cell) => {
      expect(Math.exp(usual.logs[cell + 1] ?? 0)).toBeCloseTo(one, 12);
    });
  });
});
