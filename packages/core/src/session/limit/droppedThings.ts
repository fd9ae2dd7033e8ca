import type { Dropped } from '../TimeLimit.ts';
import type { KeptLift, LiftPieces } from './LiftPieces.ts';
import { worth } from './worth.ts';

/** Everything that a time limit took, in words, the least useful first. */
export function droppedThings(
  pieces: readonly LiftPieces[],
  kept: readonly KeptLift[],
): readonly Dropped[] {
  const keptAt = (lift: number) => kept.find((one) => one.lift === lift);
  const staying = pieces.filter(({ lift }) => keptAt(lift) !== undefined);
  const steps = staying.flatMap((piece) =>
    piece.lightSteps.slice(0, keptAt(piece.lift)?.skipSteps ?? 0).map((seconds, step) => ({
      kind: 'warm-up-set' as const,
      lift: piece.lift,
      step,
      minutesSaved: seconds / 60,
      message: `Warm-up ${step + 1} of ${piece.exercise.name}: it only warms the body, which the lifts before it have done.`,
    })),
  );
  const all = pieces.map(({ exercise, leanSets }) => ({ exercise, sets: leanSets }));
  const sets = staying
    .flatMap((piece) => {
      const left = keptAt(piece.lift)?.sets ?? 0;
      return piece.furtherSets.slice(left - piece.leanSets).map((seconds, at) => ({
        kind: 'work-set' as const,
        lift: piece.lift,
        step: left + at,
        minutesSaved: seconds / 60,
        message: `Set ${left + at + 1} of ${piece.exercise.name}: a further set adds less than a first one.`,
      }));
    })
    .sort((a, b) => b.step - a.step);
  const chains = staying
    .filter(({ lift, chainSeconds }) => chainSeconds > 0 && keptAt(lift)?.skipChain)
    .map((piece) => ({
      kind: 'chain' as const,
      lift: piece.lift,
      step: 0,
      minutesSaved: piece.chainSeconds / 60,
      message: `Going on past failure in ${piece.exercise.name}: it costs recovery and was not seen to build more.`,
    }));
  const gone = pieces
    .filter(({ lift }) => keptAt(lift) === undefined)
    .map((piece) => ({
      loss: worth(all) - worth(all.filter((_, at) => pieces[at] !== piece)),
      dropped: {
        kind: 'lift' as const,
        lift: piece.lift,
        step: 0,
        minutesSaved: secondsOf(piece) / 60,
        message: `${piece.exercise.name}: ${whyNot(piece, staying)}`,
      },
    }))
    .sort((a, b) => a.loss - b.loss)
    .map(({ dropped }) => dropped);
  return [...steps, ...chains, ...sets, ...gone];
}

function whyNot({ exercise }: LiftPieces, staying: readonly LiftPieces[]): string {
  const movers = Object.keys(exercise.direct);
  const same = staying.filter((other) => movers.some((muscle) => muscle in other.exercise.direct));
  const isCovered = movers.every((muscle) =>
    staying.some((other) => muscle in { ...other.exercise.direct, ...other.exercise.indirect }),
  );
  const names = same.map((other) => other.exercise.name).join(' and ');
  return isCovered && names !== ''
    ? `what it trains is trained by ${names} as well.`
    : 'what stays is worth more in the time there is.';
}

function secondsOf({ leanSeconds, furtherSets, lightSteps, chainSeconds }: LiftPieces): number {
  return [...furtherSets, ...lightSteps, chainSeconds].reduce(
    (sum, seconds) => sum + seconds,
    leanSeconds,
  );
}
