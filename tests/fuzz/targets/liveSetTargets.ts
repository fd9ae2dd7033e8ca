import {
  advanceLiveSet,
  dueStop,
  type LiveSet,
  liveSetRecord,
  liveStanding,
  startLiveSet,
} from '@windlass/core/extension';
import {
  isUnderWay,
  savedSet,
} from '../../../packages/calculators/src/past-failure/live/savedSet.ts';
import { damaged } from '../inputs/texts.ts';
import { damagedJson } from '../inputs/trees.ts';
import type { Target } from '../Target.ts';

const ready = startLiveSet({
  exerciseId: 'chin-up',
  load: { value: 82, unit: 'kg' },
  stages: [{ kind: 'lift' }, { kind: 'pause', seconds: 10 }],
  secondsPerRep: 4,
  maxSeconds: 180,
});
const begun = (['started', 'rep', 'rep', 'failed'] as const).reduce(
  (set: LiveSet, kind, at) => advanceLiveSet(set, { kind, atSeconds: 4 * at }).set,
  ready,
);
const running = { set: begun, origin: 1_800_000_000, name: 'Chin-up', tempo: '3-0-1-0' };

/** A set that a tab was following, as its memory gives it back. */
export const liveSetTargets: readonly Target[] = [
  {
    name: 'set kept by a tab',
    weight: 40,
    mostMs: 500,
    make: (random) => {
      const text = damagedJson(running, random);
      return random.oneIn(3) ? damaged(text, random) : text;
    },
    run: (text: string) => {
      const saved = savedSet({ getItem: () => text, setItem: () => {}, removeItem: () => {} });
      if (saved === null) return null;
      const { set } = saved;
      return [isUnderWay(saved), liveStanding(set), dueStop(set, 1000), liveSetRecord(set, 20_000)];
    },
  },
];
