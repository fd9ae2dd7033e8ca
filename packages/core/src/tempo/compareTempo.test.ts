import { describe, expect, it } from 'vitest';
import { comparePace } from './comparePace.ts';
import { compareTempo } from './compareTempo.ts';
import type { Tempo } from './Tempo.ts';

const asked: Tempo = {
  lowerSeconds: 4,
  pauseAfterLowerSeconds: 2,
  liftSeconds: 1,
  pauseAfterLiftSeconds: 1,
};
const asAsked = {
  lowerSeconds: 4,
  pauseAfterLowerSeconds: 2,
  liftSeconds: 1,
  pauseAfterLiftSeconds: 1,
};
const counted = { lastPause: 'counted' } as const;

function compared(...parameters: Parameters<typeof compareTempo>) {
  const comparison = compareTempo(...parameters);
  if (comparison.kind !== 'compared') throw new Error('nothing was compared');
  return comparison;
}

describe('compareTempo', () => {
  it('finds nothing off in a set done as asked', () => {
    const comparison = compared(asked, [asAsked, asAsked], counted);
    expect(comparison.reps.map((rep) => rep.phasesOff)).toEqual([[], []]);
    expect(comparison.set).toEqual({ askedSeconds: 16, doneSeconds: 16 });
    expect(comparison.phases.map((phase) => phase.deviationSeconds)).toEqual(
      Array.from({ length: 4 }, () => [0, 0]),
    );
  });

  it('numbers the repetitions from 1, and counts no resting pause as under load', () => {
    const restingPauses = ['pause-after-lower', 'pause-after-lift'] as const;
    const comparison = compared(asked, [asAsked, asAsked], { ...counted, restingPauses });
    // Under load: lowering 4 s and lift 1 s; both pauses, 2 s and 1 s, rest.
    expect(
      comparison.reps.map(({ rep, seconds, secondsUnderLoad }) => [rep, seconds, secondsUnderLoad]),
    ).toEqual([
      [1, 8, 5],
      [2, 8, 5],
    ]);
  });

  it('measures each phase over the set', () => {
    const done = [asAsked, { ...asAsked, lowerSeconds: 2.3 }, { ...asAsked, lowerSeconds: 4.5 }];
    const [lower] = compared(asked, done, counted).phases;
    expect(lower).toEqual({
      phase: 'lower',
      asked: 4,
      shortestSeconds: 2.3,
      meanSeconds: 3.6, // (4 + 2.3 + 4.5) / 3
      longestSeconds: 4.5,
      deviationSeconds: [0, -1.7, 0.5],
    });
  });

  it('calls a phase off only beyond the tolerance', () => {
    const done = [
      { ...asAsked, lowerSeconds: 3.5 },
      { ...asAsked, lowerSeconds: 3.499 },
    ];
    const offIn = (toleranceSeconds: number) =>
      compared(asked, done, { ...counted, toleranceSeconds }).reps.map((rep) => rep.phasesOff);
    expect(offIn(0.5)).toEqual([[], ['lower']]);
    expect(offIn(0)).toEqual([['lower'], ['lower']]);
    expect(offIn(1)).toEqual([[], []]);
  });

  it('never calls a fast lift off, however long it took', () => {
    const fast = { ...asked, liftSeconds: 'X' } as const;
    const comparison = compared(fast, [{ ...asAsked, liftSeconds: 3 }], counted);
    expect(comparison.reps[0]?.phasesOff).toEqual([]);
    expect(comparison.phases.find((phase) => phase.phase === 'lift')).toMatchObject({
      asked: 'X',
      longestSeconds: 3,
      deviationSeconds: 'X',
    });
    expect(comparison.set).toEqual({ askedSeconds: 8, doneSeconds: 10 });
  });

  it('does not look at the end of the set where the last pause is left out', () => {
    const racked = { ...asAsked, pauseAfterLiftSeconds: 0 };
    const leftOut = compared(asked, [asAsked, racked], { lastPause: 'left-out' });
    expect(leftOut.reps[1]?.phasesOff).toEqual([]);
    expect(leftOut.set).toEqual({ askedSeconds: 15, doneSeconds: 15 });
    expect(compared(asked, [asAsked, racked], counted).reps[1]?.phasesOff).toEqual([
      'pause-after-lift',
    ]);
    const single = compared(asked, [racked], { lastPause: 'left-out' });
    expect(single.phases.map((phase) => phase.phase)).toEqual([
      'lower',
      'pause-after-lower',
      'lift',
    ]);
  });

  it('counts the seconds under load that were done', () => {
    const timing = { ...counted, restingPauses: ['pause-after-lift'] } as const;
    const comparison = compared(asked, [{ ...asAsked, pauseAfterLiftSeconds: 5 }], timing);
    expect(comparison.underLoad).toEqual({ askedSeconds: 7, doneSeconds: 7 });
    expect(comparison.reps[0]).toMatchObject({ seconds: 12, secondsUnderLoad: 7 });
  });

  it('orders phases as the exercise does them', () => {
    const { phases } = compared(asked, [asAsked], { ...counted, startsWith: 'lift' });
    expect(phases[0]?.phase).toBe('lift');
  });

  it('says when nothing was done, and refuses what was not measured', () => {
    expect(compareTempo(asked, [], counted)).toEqual({ kind: 'nothing-done' });
    expect(() => compareTempo(asked, [{ ...asAsked, liftSeconds: -1 }], counted)).toThrow(
      /liftSeconds of rep 1/,
    );
  });
});

describe('comparePace', () => {
  it('sets a stopwatch time against the tempo', () => {
    // 8 × 8 = 64 s asked; 48 ÷ 64 = 0.75; 48 ÷ 8 = 6 s a rep.
    expect(comparePace(asked, 8, 48, counted)).toEqual({
      kind: 'compared',
      askedSeconds: 64,
      doneSeconds: 48,
      share: 0.75,
      secondsPerRep: 6,
    });
    expect(comparePace(asked, 8, 63, { lastPause: 'left-out' })).toMatchObject({ share: 1 });
    expect(comparePace(asked, 0, 10, counted)).toEqual({ kind: 'nothing-done' });
  });
});
