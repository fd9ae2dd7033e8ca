import { type Load, scaleLoad } from '../load/index.ts';
import type { Equipment } from './Equipment.ts';
import type { Bridge, BridgeId } from './StepSize.ts';
import { LARGE_STEP_PERCENT, REPETITION_CEILING } from './stepSizes.ts';

const MESSAGES: Readonly<Record<BridgeId, string>> = {
  'more-repetitions': `Keep the load and add repetitions, up to about ${REPETITION_CEILING} a set.`,
  'slower-lowering': 'Keep the load and take a second or two longer to lower it.',
  pause: 'Keep the load and stop for a second where the lift is hardest.',
  'one-side': 'Use the next weight on one side at a time, so that the other hand can help.',
  'small-plates': 'Get a set of small plates, the same for each end.',
  'add-on': 'Put a magnet, a cuff or another small piece on the weight.',
  'other-ratio': 'Do the exercise on a cable with a 2:1 pulley, where each step is halved.',
};

const ALWAYS = ['more-repetitions', 'slower-lowering', 'pause'] as const;

const ALSO: Readonly<Record<Equipment['kind'], readonly BridgeId[]>> = {
  barbell: ['small-plates'],
  'one-post': ['small-plates'],
  fixed: ['one-side', 'add-on', 'other-ratio'],
  handles: ['small-plates', 'one-side'],
  stack: ['add-on', 'one-side'],
  machine: ['small-plates', 'one-side'],
  body: ['add-on'],
  band: [],
};

/** Ways around a step that is too large, for this equipment, in the order to try them. */
export function bridgesFor(kind: Equipment['kind'], load: Load): readonly Bridge[] {
  return [...ALWAYS, ...ALSO[kind]].map((id) => ({
    id,
    message: MESSAGES[id],
    ...(id === 'small-plates' || id === 'add-on'
      ? { addsAtMost: scaleLoad(load, LARGE_STEP_PERCENT, 100) }
      : {}),
  }));
}
