import type { Caution } from '../safety/index.ts';
import type { PairInput } from './Pair.ts';
import { pairRules } from './pairRules.ts';
import { pairPractice, pairSources } from './pairSources.ts';

/** What is always to be said about a pair, and that its way is long when it is. */
export function pairCautions(
  { transitionSeconds }: PairInput,
  recovered: number,
): readonly Caution[] {
  const goal = pairRules.transitionSeconds;
  const tooLong: Caution = {
    id: 'pair-transition-too-long',
    level: 'caution',
    what: `Transition too long: ${transitionSeconds} s between the two lifts, where ${goal} s are wanted.`,
    why: `By then about ${Math.round(recovered * 100)} % of what the isolation set took for the moment is back.`,
    instead: 'Choose two lifts that are done at one spot, or put both loads within reach.',
    ask: [],
    sources: [pairPractice],
  };
  const mixed: Caution = {
    id: 'pair-evidence-mixed',
    level: 'note',
    what: 'Pairs of isolation and compound lifts add no proven size or strength.',
    why: 'Two training studies found no advantage. In studies of muscle activity the target worked no harder on the second lift, and the triceps worked harder after flies.',
    instead: 'Use a pair because it is liked, short, or lets a lighter load do on the second lift.',
    ask: [],
    sources: pairSources,
  };
  const test: Caution = {
    id: 'pair-first-set-is-a-test',
    level: 'note',
    what: 'The lighter load is a starting guess.',
    why: 'Studies agree that the second lift gets worse and do not say by how much.',
    instead:
      'Count the repetitions of the first try, and change the load by the given share for each repetition more or fewer than wanted.',
    ask: [],
    sources: pairSources,
  };
  return transitionSeconds > goal ? [tooLong, mixed, test] : [mixed, test];
}
