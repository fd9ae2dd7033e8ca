import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exercises } from '../../anatomy/index.ts';
import { casesTimes } from '../cases.testing.ts';
import type { KeptLift, LiftPieces } from './LiftPieces.ts';
import { leastLoss } from './leastLoss.ts';
import { worth } from './worth.ts';

const seconds = fc.integer({ min: 20, max: 300 });
const lift = fc.record({
  exercise: fc.constantFrom(...exercises),
  leanSeconds: seconds,
  leanSets: fc.constantFrom(1, 1, 1, 2),
  furtherSets: fc.array(seconds, { maxLength: 2 }),
  chainSeconds: fc.constantFrom(0, 0, 40),
  lightSteps: fc.array(seconds, { maxLength: 2 }),
  stays: fc.constantFrom(false, false, false, true),
});
const session = fc
  .array(lift, { minLength: 1, maxLength: 4 })
  .map((lifts) => lifts.map((one, at): LiftPieces => ({ ...one, lift: at })));

/** Everything that could be kept of a session. */
function everyChoice(pieces: readonly LiftPieces[]): readonly (readonly KeptLift[])[] {
  return pieces.reduce<readonly (readonly KeptLift[])[]>(
    (found, piece) => {
      const ways = piece.furtherSets
        .concat(0)
        .flatMap((_, sets) =>
          piece.lightSteps
            .concat(0)
            .flatMap((__, skipSteps) =>
              (piece.chainSeconds > 0 ? [false, true] : [false]).map((skipChain) => [
                { lift: piece.lift, sets: piece.leanSets + sets, skipSteps, skipChain },
              ]),
            ),
        );
      const all: readonly (readonly KeptLift[])[] = piece.stays ? ways : [[], ...ways];
      return found.flatMap((kept) => all.map((way) => [...kept, ...way]));
    },
    [[]],
  );
}

function secondsOf(pieces: readonly LiftPieces[], kept: readonly KeptLift[]): number {
  return kept.reduce((sum, { lift: at, sets, skipSteps, skipChain }) => {
    const piece = pieces[at] as LiftPieces;
    const further = piece.furtherSets.slice(0, sets - piece.leanSets);
    return [...further, ...piece.lightSteps.slice(skipSteps)].reduce(
      (total, one) => total + one,
      sum + piece.leanSeconds + (skipChain ? 0 : piece.chainSeconds),
    );
  }, 0);
}

/** What is kept of lifts, sets and warm-up sets, the most useful kind first. */
function useful(pieces: readonly LiftPieces[], kept: readonly KeptLift[]) {
  const exercise = ({ lift: at }: KeptLift) => (pieces[at] as LiftPieces).exercise;
  return [
    worth(kept.map((one) => ({ exercise: exercise(one), sets: 1 }))),
    worth(kept.map((one) => ({ exercise: exercise(one), sets: one.sets }))),
    kept.filter(({ lift: at, skipChain }) => (pieces[at]?.chainSeconds ?? 0) > 0 && !skipChain)
      .length,
    kept.reduce(
      (sum, { lift: at, skipSteps }) => sum + (pieces[at]?.lightSteps.length ?? 0) - skipSteps,
      0,
    ),
  ] as const;
}

const ROUNDING = 1e-9;

/** By the most useful kind that differs. */
function compare(a: readonly number[], b: readonly number[]): number {
  const differs = a.findIndex((value, at) => Math.abs(value - (b[at] ?? 0)) > ROUNDING);
  return differs < 0 ? 0 : (a[differs] ?? 0) - (b[differs] ?? 0);
}

describe('leastLoss', () => {
  it('keeps as much as the best of everything that could be kept, kind after kind', () => {
    fc.assert(
      fc.property(session, fc.integer({ min: 20, max: 1500 }), (pieces, limit) => {
        const found = leastLoss(pieces, limit);
        const fitting = everyChoice(pieces).filter(
          (kept) => kept.length > 0 && secondsOf(pieces, kept) <= limit,
        );
        expect(found === undefined).toBe(fitting.length === 0);
        if (found === undefined) return;
        expect(secondsOf(pieces, found)).toBeLessThanOrEqual(limit);
        const mine = useful(pieces, found);
        // Two lifts of the same worth are told apart by what else fits beside them: see the tie rule.
        for (const other of fitting) {
          expect(compare(useful(pieces, other).slice(0, 1), mine.slice(0, 1))).toBeLessThanOrEqual(
            0,
          );
        }
        const lifts = found.map((one) => one.lift).join();
        const same = fitting.filter((kept) => kept.map((one) => one.lift).join() === lifts);
        for (const other of same)
          expect(compare(useful(pieces, other), mine)).toBeLessThanOrEqual(0);
      }),
      casesTimes(1.5),
    );
  });

  it('drops nothing that could stay by dropping something less useful that is kept', () => {
    fc.assert(
      fc.property(session, fc.integer({ min: 20, max: 1500 }), (pieces, limit) => {
        const kept = leastLoss(pieces, limit) ?? [];
        const dropped = pieces.filter(({ lift: at }) => kept.every((one) => one.lift !== at));
        const lean = ({ lift: at, leanSets, lightSteps }: LiftPieces): KeptLift => ({
          lift: at,
          sets: leanSets,
          skipSteps: lightSteps.length,
          skipChain: true,
        });
        for (const piece of kept.length > 0 ? dropped : []) {
          const others = kept.map(({ lift: at }) => lean(pieces[at] as LiftPieces));
          for (const gone of others.filter(({ lift: at }) => !pieces[at]?.stays)) {
            const instead = [...others.filter((one) => one !== gone), lean(piece)];
            if (secondsOf(pieces, instead) > limit) continue;
            expect(
              compare(useful(pieces, instead).slice(0, 1), useful(pieces, kept).slice(0, 1)),
            ).toBeLessThanOrEqual(0);
          }
        }
      }),
      casesTimes(1.5),
    );
  });
});
