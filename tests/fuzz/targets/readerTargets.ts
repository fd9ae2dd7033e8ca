import {
  readClient,
  readGym,
  readHealth,
  readIntent,
  readSessionFile,
} from '@windlass/core/schema';
import { examples } from '../../../site/src/planner/state/examples.ts';
import { anyText } from '../inputs/texts.ts';
import { damagedTree } from '../inputs/trees.ts';
import type { Target } from '../Target.ts';

const plans = Object.values(examples);

/** Readers of what a program hands over: any value, not only what a file can hold. */
export const readerTargets: readonly Target[] = [
  reader(
    'client',
    readClient,
    plans.map(({ client }) => client),
  ),
  reader(
    'gym',
    readGym,
    plans.map(({ gym }) => gym),
  ),
  reader(
    'health answers',
    readHealth,
    plans.map(({ client }) => client.health),
  ),
  reader(
    'intent',
    readIntent,
    plans.map(({ intent }) => intent),
  ),
  reader('plan', readSessionFile, plans),
];

function reader(
  name: string,
  read: (input: unknown) => unknown,
  valid: readonly unknown[],
): Target {
  return {
    name: `reader of a ${name}`,
    weight: 60,
    mostMs: 500,
    make: (random) =>
      random.oneIn(20) ? anyText(random) : damagedTree(random.pick(valid), random),
    run: (input: unknown) => read(input),
  };
}
