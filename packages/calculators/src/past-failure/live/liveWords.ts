import type { LiveEnd, LivePhase, LoweringControl, Stage } from '@windlass/core/extension';
import { formatNumber } from '../../ui/formatNumber.ts';
import { said } from '../words.ts';

const one = (seconds: number) => formatNumber(seconds, 1);

/** What is said while a set is followed. */
export const live = {
  region: (name: string) => `${name}, step by step`,
  leave: 'Close',
  setTime: (seconds: string) => `${seconds} s since the start`,
  phases: {
    ready: 'Ready',
    lifting: 'Lifting',
    between: 'Load down',
    holding: 'Holding',
    lowering: 'Lowering',
    ended: 'Over',
  } satisfies Readonly<Record<LivePhase, string>>,
  reps: (count: number) => (count === 1 ? 'rep' : 'reps'),
  seconds: 's',
  paced: (since: number, asked: number) => `${one(since)} s into this one, ${one(asked)} s asked`,
  atMost: (seconds: number) => `${seconds} s at most`,
  lowering: (number: number, most: number, seconds: number) =>
    `lowering ${number} of ${most}, ${seconds} s asked`,
  whenReady: (stages: readonly string[]) => said.chain(stages),
  goOn: (stage: Stage): string => {
    switch (stage.kind) {
      case 'pause':
        return `Next: lift on after ${stage.seconds} s.`;
      case 'lower':
        return 'Next: bring it back to the top, then lower.';
      default:
        return `Next: ${said.stage(stage)}.`;
    }
  },
  nothingNext: 'Nothing more is planned.',
  moves: {
    started: () => 'Start',
    rep: () => 'Rep done',
    failed: () => 'Not finished',
    'lifting-resumed': (stage: Stage) => resumed(stage),
    'hold-begun': () => 'Hold begins',
    'hold-ended': () => 'Hold is over',
    'lowering-begun': () => 'Lowering begins',
    'lowering-ended': () => 'At the bottom',
  },
  undo: 'Take back',
  redo: 'Bring back',
  end: 'End the set',
  sign: 'Stop for a sign',
  back: 'Back to the set',
  howEnded: 'How does it end?',
  targetReached: 'All that was planned is done',
  repsLeft: (count: number) =>
    count === 5
      ? '5 or more reps were left'
      : `${count} ${count === 1 ? 'rep was' : 'reps were'} left`,
  justStopped: 'Stopped, without a count',
  whichSign: 'Which sign? The set ends with it.',
  due: {
    'hold-too-long': 'The hold is past its time. Let the load down now.',
    'set-too-long': 'The set is past its longest time. Let the load down now.',
  },
  loadIsDown: 'The load is down',
  control: ({ kind, nextSeconds, thresholdSeconds }: LoweringControl) => {
    if (kind !== 'going' || nextSeconds === null) return '';
    return `Lowerings are getting shorter. At this pace the next takes ${one(Math.max(0, nextSeconds))} s, and under ${one(thresholdSeconds)} s control is lost.`;
  },
  ended: (end: LiveEnd, sign: string | undefined): string => {
    if (end.by === 'chain-done') return 'Every stage is done.';
    if (end.by === 'choice') {
      return end.reason === 'target-reached' ? 'Ended as planned.' : 'Ended by choice.';
    }
    return `Ended by a stop rule: ${clockRules[end.rule] ?? (sign === undefined ? end.rule : `${sign}.`)}`;
  },
  record: 'The set',
  recordStage: 'Stage',
  recordSeconds: 'Seconds of each',
  failed: 'until it could not be finished',
  none: 'none',
  underLoad: (seconds: string) => `${seconds} s under load; the attempt that failed is not timed.`,
  each: (seconds: readonly number[]) => seconds.map((value) => one(value)).join(', '),
  learned: (reps: number) =>
    `For the log: ${reps} full ${reps === 1 ? 'rep' : 'reps'}. What came after failure says nothing about lifting strength.`,
  nothingLearned: 'Nothing for the log: no full repetition was tried.',
  copyRow: 'Copy for the log (CSV)',
  copyAll: 'Copy the whole record (JSON)',
  again: 'Another set like this',
} as const;

const clockRules: Readonly<Record<string, string>> = {
  'hold-too-long': 'the hold was past its time.',
  'set-too-long': 'the set was past its longest time.',
};

function resumed(stage: Stage): string {
  switch (stage.kind) {
    case 'lighter':
      return 'Lighter now: lift on';
    case 'assisted':
      return 'Lift on with help';
    case 'part-range':
      return 'Part-range reps begin';
    default:
      return 'Lift on';
  }
}
