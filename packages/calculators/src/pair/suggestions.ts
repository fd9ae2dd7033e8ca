import type { MuscleId } from '@windlass/core/anatomy';
import { inSentence } from '@windlass/core/basis';
import { pairsInOnePlace } from '@windlass/core/pairing';
import type { NextLink } from '../contract/Answer.ts';
import { pairLifts } from '../precomputed/pairLifts.ts';
import { inputTexts } from '../shared/inputTexts.ts';
import { fields, type PairInputs } from './fields.ts';
import { said } from './words.ts';

const SUGGESTED = 3;

/** Pairs for the same muscles that need no way between them, one for each compound lift, as links. */
export function suggestions(input: PairInputs, target: readonly MuscleId[]): readonly NextLink[] {
  const pairs = pairsInOnePlace(target, pairLifts).filter(
    ({ isolation, compound }) =>
      !(isolation.id === input.isolation && compound.id === input.compound),
  );
  return pairs
    .filter(
      ({ compound }, at) => pairs.findIndex((pair) => pair.compound.id === compound.id) === at,
    )
    .slice(0, SUGGESTED)
    .map(({ isolation, compound }) => ({
      calculator: 'pair',
      label: said.onePlace(inSentence(isolation.name), inSentence(compound.name)),
      carry: inputTexts(fields, {
        ...input,
        isolation: isolation.id,
        compound: compound.id,
        between: 10,
      }),
    }));
}
