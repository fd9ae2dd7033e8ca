import { describe, expect, it } from 'vitest';
import { findExercise } from '../../anatomy/index.ts';
import { droppedThings } from './droppedThings.ts';
import type { KeptLift, LiftPieces } from './LiftPieces.ts';
import { worth } from './worth.ts';

function named(id: string) {
  const found = findExercise(id);
  if (found.kind !== 'found') throw new Error(`${id} has left the list of exercises`);
  return found.exercise;
}

const piece = (lift: number, id: string, change: Partial<LiftPieces> = {}): LiftPieces => ({
  lift,
  exercise: named(id),
  leanSeconds: 200,
  leanSets: 1,
  furtherSets: [],
  chainSeconds: 0,
  lightSteps: [],
  stays: false,
  ...change,
});
const keep = (lift: number, change: Partial<KeptLift> = {}): KeptLift => ({
  lift,
  sets: 1,
  skipSteps: 0,
  skipChain: false,
  ...change,
});
const brief = (...args: Parameters<typeof droppedThings>) =>
  droppedThings(...args).map(({ kind, lift, step, minutesSaved }) => [
    kind,
    lift,
    step,
    minutesSaved,
  ]);

describe('droppedThings', () => {
  const pieces = [
    piece(0, 'cable-pulldown', { furtherSets: [180, 150, 120] }),
    piece(2, 'dumbbell-bench-press', {
      lightSteps: [60, 90],
      furtherSets: [240],
      chainSeconds: 30,
    }),
  ];

  it('names warm-up sets, what goes on past failure, and further sets from the last on', () => {
    const kept = [keep(0, { sets: 2 }), keep(2, { skipSteps: 1, skipChain: true })];
    expect(brief(pieces, kept)).toEqual([
      ['warm-up-set', 2, 0, 1],
      ['chain', 2, 0, 0.5],
      ['work-set', 0, 3, 2],
      ['work-set', 0, 2, 2.5],
      ['work-set', 2, 1, 4],
    ]);
    const messages = droppedThings(pieces, kept).map(({ message }) => message);
    expect(messages[0]).toMatch(/^Warm-up 1 of Dumbbell bench press/);
    expect(messages[2]).toMatch(/^Set 4 of Cable pulldown/);
    expect(messages[3]).toMatch(/^Set 3 of Cable pulldown/);
  });

  it('counts from the sets that stay as long as the lift does', () => {
    const lean = [piece(0, 'cable-pulldown', { leanSets: 2, furtherSets: [180, 150] })];
    expect(brief(lean, [keep(0, { sets: 3 })])).toEqual([['work-set', 0, 3, 2.5]]);
    expect(brief(lean, [keep(0, { sets: 4 })])).toEqual([]);
  });

  it('names nothing where all is kept', () => {
    expect(brief(pieces, [keep(0, { sets: 4 }), keep(2, { sets: 2 })])).toEqual([]);
    // a chain that is none cannot be dropped
    expect(brief(pieces.slice(0, 1), [keep(0, { sets: 4, skipChain: true })])).toEqual([]);
  });

  it('names a whole lift with all that it would have taken, and nothing of its parts', () => {
    // 200 + 240 + 60 + 90 + 30 s
    expect(brief(pieces, [keep(0, { sets: 4 })])).toEqual([['lift', 2, 0, 620 / 60]]);
  });

  it('names lifts that lose less before those that lose more', () => {
    const three = [
      piece(0, 'dumbbell-bench-press'),
      piece(1, 'cable-pulldown'),
      piece(2, 'dumbbell-curl'),
    ];
    const lifts = (kept: number) => droppedThings(three, [keep(kept)]).map(({ lift }) => lift);
    const all = three.map(({ exercise }) => ({ exercise, sets: 1 }));
    const loss = (gone: number) => worth(all) - worth(all.filter((_, at) => at !== gone));
    expect(loss(2)).toBeLessThan(loss(1));
    expect(lifts(0)).toEqual([2, 1]);
    expect(loss(2)).toBeLessThan(loss(0));
    expect(lifts(1)).toEqual([2, 0]);
  });

  it('says which lifts train the same, where they train all of it', () => {
    const why = (gone: string, ...staying: readonly string[]) => {
      const all = [...staying, gone].map((id, lift) => piece(lift, id));
      const kept = staying.map((_, lift) => keep(lift));
      return droppedThings(all, kept)[0]?.message;
    };
    expect(why('straight-arm-cable-pulldown', 'cable-pulldown')).toBe(
      'Straight-arm cable pulldown: what it trains is trained by Cable pulldown as well.',
    );
    expect(why('straight-arm-cable-pulldown', 'cable-pulldown', 'chin-up')).toContain(
      'by Cable pulldown and Chin-up as well',
    );
    expect(why('dumbbell-curl', 'dumbbell-bench-press')).toBe(
      'Dumbbell curl: what stays is worth more in the time there is.',
    );
    // a row works both movers of the curl, but no lift that stays is done for them
    expect(why('dumbbell-curl', 'cable-row')).toContain('what stays is worth more');
    // a chin-up is done for the lats and helps with the rest of the row
    expect(why('cable-row', 'chin-up')).toContain('by Chin-up as well');
    expect(why('cable-row', 'chin-up', 'dumbbell-bench-press')).toContain('by Chin-up as well');
    // of the row only the lats are left to the straight-arm pulldown
    expect(why('cable-row', 'straight-arm-cable-pulldown')).toContain('what stays is worth more');
  });
});
