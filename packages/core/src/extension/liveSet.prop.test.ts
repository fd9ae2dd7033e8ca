import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { advanceLiveSet } from './advanceLiveSet.ts';
import type { LiveSet, LiveSetEvent, LiveSetPlan } from './LiveSet.ts';
import { liveSetRecord } from './liveSetRecord.ts';
import { liveStanding } from './liveStanding.ts';
import { redoLiveSet } from './redoLiveSet.ts';
import { resumeLiveSet } from './resumeLiveSet.ts';
import { startLiveSet } from './startLiveSet.ts';
import { undoLiveSet } from './undoLiveSet.ts';

const plan: LiveSetPlan = {
  exerciseId: 'chin-up',
  load: { value: 180, unit: 'lb' },
  stages: [
    { kind: 'lift' },
    { kind: 'pause', seconds: 15 },
    { kind: 'part-range', maxReps: 4 },
    { kind: 'hold', at: 'middle', maxSeconds: 20 },
    { kind: 'lower', secondsEach: 5, maxLowerings: 4 },
  ],
  secondsPerRep: 4,
  maxSeconds: 200,
};

const simple = fc.constantFrom(
  'started' as const,
  'rep' as const,
  'failed' as const,
  'lifting-resumed' as const,
  'hold-begun' as const,
  'hold-ended' as const,
  'lowering-begun' as const,
  'lowering-ended' as const,
);
/** Events with gaps of time that may even run back, and some that end a set. */
const moves = fc.array(
  fc.oneof(
    {
      weight: 12,
      arbitrary: fc.record({ kind: simple, gap: fc.double({ min: -1, max: 12, noNaN: true }) }),
    },
    { weight: 1, arbitrary: fc.record({ kind: fc.constant('stopped' as const), gap: fc.nat(5) }) },
    { weight: 1, arbitrary: fc.record({ kind: fc.constant('sign' as const), gap: fc.nat(5) }) },
  ),
  { maxLength: 60 },
);

function eventOf(kind: LiveSetEvent['kind'], atSeconds: number): LiveSetEvent {
  if (kind === 'stopped') return { kind, atSeconds, reason: 'chosen' };
  return kind === 'sign' ? { kind, atSeconds, rule: 'rising-pain' } : { kind, atSeconds };
}

function play(list: readonly { kind: LiveSetEvent['kind']; gap: number }[]): readonly LiveSet[] {
  let now = 0;
  let set = startLiveSet(plan);
  const sets = [set];
  for (const { kind, gap } of list) {
    now += gap;
    const step = advanceLiveSet(set, eventOf(kind, now));
    if (step.problem) {
      expect(step.set).toBe(set);
      expect(step.problem.message).toMatch(/\.$/);
    } else {
      expect(step.set.log).toHaveLength(set.log.length + 1);
    }
    set = step.set;
    sets.push(set);
  }
  return sets;
}

it('any order of events leaves a valid set', () => {
  fc.assert(
    fc.property(moves, (list) => {
      for (const set of play(list)) {
        const standing = liveStanding(set);
        expect(resumeLiveSet(set).ok).toBe(true);
        expect(standing.phase === 'ended').toBe(standing.end !== null);
        expect(standing.next).toContain('sign');
        const seconds = standing.stages.flatMap((stage) => stage.seconds);
        expect(seconds.every((one) => one >= 0)).toBe(true);
        expect(standing.secondsUnderLoad).toBeCloseTo(
          seconds.reduce((a, b) => a + b, 0),
          6,
        );
        expect(liveSetRecord(set, 1).kind).toBe(standing.end ? 'done' : 'open');
      }
    }),
  );
});

it('a sign, an uncontrolled lowering or a time run out is never followed by more work', () => {
  fc.assert(
    fc.property(moves, (list) => {
      const sets = play(list);
      const end = sets.findIndex((set) => liveStanding(set).end !== null);
      if (end === -1) return;
      const finished = liveStanding(sets[end] as LiveSet);
      for (const later of sets.slice(end)) {
        expect(liveStanding(later).stages).toEqual(finished.stages);
        expect(liveStanding(later).end).toEqual(finished.end);
      }
    }),
  );
});

it('every short lowering ends its set', () => {
  fc.assert(
    fc.property(moves, (list) => {
      const standing = liveStanding(play(list).at(-1) as LiveSet);
      const lowered = standing.stages.find(({ stage }) => stage.kind === 'lower')?.seconds ?? [];
      // All but the last of them must have reached the threshold of 4 s.
      expect(lowered.slice(0, -1).every((seconds) => seconds >= 4)).toBe(true);
    }),
  );
});

it('undo then redo is the identity, and undo takes back exactly one event', () => {
  fc.assert(
    fc.property(moves, fc.nat(10), (list, times) => {
      const set = play(list).at(-1) as LiveSet;
      let back = set;
      let taken = 0;
      while (taken < Math.min(times, set.log.length)) {
        back = undoLiveSet(back).set;
        taken += 1;
      }
      expect(back.log).toEqual(set.log.slice(0, set.log.length - taken));
      for (let i = 0; i < taken; i++) back = redoLiveSet(back).set;
      expect(back).toEqual(set);
    }),
  );
});

it('undoing the last event stands where the set stood before it', () => {
  fc.assert(
    fc.property(moves, (list) => {
      const sets = play(list);
      sets.slice(1).forEach((set, index) => {
        const before = sets[index] as LiveSet;
        if (set === before) return;
        expect(liveStanding(undoLiveSet(set).set)).toEqual(liveStanding(before));
      });
    }),
  );
});

it('saved and taken up again at any event, a set is the same', () => {
  fc.assert(
    fc.property(moves, (list) => {
      for (const set of play(list)) {
        const outcome = resumeLiveSet(JSON.parse(JSON.stringify(set)) as LiveSet);
        expect(outcome).toEqual({ ok: true, value: set });
        expect(outcome.ok && liveStanding(outcome.value)).toEqual(liveStanding(set));
      }
    }),
    { numRuns: 40 },
  );
});
