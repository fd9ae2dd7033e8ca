import type { Exercise, Variant } from '../anatomy/index.ts';
import type { ExchangeReason, ExchangeSetting } from './Exchange.ts';
import { positionWords } from './positionWords.ts';
import { rankingWeights } from './rankingWeights.ts';

/** What speaks for and against an exercise that passes every filter, and what that does to its rank. */
export interface Remarks {
  readonly reasonsFor: readonly ExchangeReason[];
  readonly reasonsAgainst: readonly ExchangeReason[];
  readonly score: number;
}

/** Remarks that do not depend on what is exchanged: positions, hands, load, being alone. */
export function remarks(
  exercise: Exercise,
  setUps: readonly Variant[],
  { limits, alone, toFailure = true }: ExchangeSetting,
): Remarks {
  const eased = limits.positions.filter(
    ({ position, level }) => level === 'ease' && exercise.positions.includes(position),
  );
  const unstepped = exercise.loads.every((load) => load === 'body' || load === 'band');
  const oneHand = exercise.hands === 1 && limits.handsOutOfUse.length > 0;
  const careful = alone === true && exercise.atFailureAlone !== 'leave';
  const against: readonly (readonly [boolean, ExchangeReason, number])[] = [
    ...eased.map(
      ({ position, reason }) =>
        [
          true,
          {
            code: 'position-to-ease',
            words: `It has ${positionWords(position)}: less load or range, and only without pain. ${reason.words}`,
          },
          rankingWeights.position,
        ] as const,
    ),
    [
      oneHand,
      {
        code: 'one-hand-if-agreed',
        words: `Only the ${limits.handsOutOfUse[0] === 'right' ? 'left' : 'right'} hand works, and only if the clinician agrees.`,
      },
      rankingWeights.oneHand,
    ],
    [
      careful,
      {
        code: 'care-alone',
        words: toFailure
          ? 'Alone it needs stops set just below the lowest point and tried with the empty bar.'
          : 'Alone it needs one or two repetitions in reserve.',
      },
      rankingWeights.careAlone,
    ],
    [
      unstepped,
      { code: 'load-in-coarse-steps', words: 'Its load cannot be set in small steps.' },
      rankingWeights.load,
    ],
  ];
  const counting = against.filter(([applies]) => applies);
  return {
    reasonsFor: [
      ...setUps.map(({ name, effect }) => ({ code: 'set-up', words: `${name}. ${effect}` })),
      ...(alone && exercise.atFailureAlone === 'leave'
        ? [{ code: 'can-be-left', words: 'Alone it can be left at any point.' }]
        : []),
      ...(limits.handsOutOfUse.length && exercise.hands === 0
        ? [{ code: 'no-hands', words: 'It needs no hand.' }]
        : []),
    ],
    reasonsAgainst: counting.map(([, reason]) => reason),
    score:
      counting.reduce((sum, [, , weight]) => sum + weight, 0) +
      rankingWeights.setUp * setUps.length,
  };
}
