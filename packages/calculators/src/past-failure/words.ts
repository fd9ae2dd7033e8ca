import { inSentence } from '@windlass/core/basis';
import type { Stage, StageKind } from '@windlass/core/extension';

const at = { stretched: 'stretched', middle: 'half way', contracted: 'contracted' } as const;
const times = (count: number) => (count === 1 ? 'once' : `${count} times at most`);
const reps = (count: number) => `${count} ${count === 1 ? 'rep' : 'reps'}`;

/** What the calculator for sets past failure says. */
export const said = {
  stageChoices: {
    none: 'Nothing more',
    lighter: 'Take load off, lift on',
    pause: 'Short pause, lift on',
    assisted: 'Reps with a partner’s help',
    'part-range': 'Part-range reps, muscle long',
    'hold-stretched': 'Hold, muscle stretched',
    'hold-middle': 'Hold half way',
    'hold-contracted': 'Hold, muscle contracted',
    lower: 'Lower only, slowly',
  },
  place: (place: number) =>
    ['First after failure', 'Second', 'Third', 'Fourth', 'Fifth', 'Sixth'][place - 1] ?? '',
  placeHelp: (place: number) =>
    place === 1
      ? 'A muscle holds more than it lifts and lowers more than it holds.'
      : 'Right after the one above.',
  noForecast: 'No forecast',
  tooLight: 'Below a fifth of the one-rep max nothing was measured. Take more load.',
  tooHeavy: 'Above 110 % of the one-rep max there is nothing to lift. Take less load.',
  wrongPace: 'A repetition takes from 1 to 60 s here. Change the tempo.',
  headline: 'Under load, from the first rep to the end',
  costs: (hardSets: string) => `costs ${hardSets} sets`,
  unmeasured: 'A model’s band: no study counts holds or lowerings after failure.',
  between: 'That far do lifters and days differ.',
  stageNames: {
    lift: 'Lift',
    lighter: 'Lighter',
    pause: 'After a pause',
    assisted: 'With help',
    'part-range': 'Part range',
    hold: 'Hold',
    lower: 'Lower',
  } satisfies Readonly<Record<StageKind, string>>,
  unit: (stage: Stage) => {
    if (stage.kind === 'hold') return 's';
    return stage.kind === 'lower' ? `× ${stage.secondsEach} s` : 'reps';
  },
  span: (low: string, high: string) => (low === high ? low : `${low} to ${high}`),
  stage: (stage: Stage): string => {
    switch (stage.kind) {
      case 'lift':
        return 'lift to failure';
      case 'lighter':
        return `go on with ${Math.round(stage.loadShare * 100)} % of the load`;
      case 'pause':
        return `pause ${stage.seconds} s and lift on`;
      case 'assisted':
        return `${reps(stage.reps)} with help`;
      case 'part-range':
        return `${reps(stage.maxReps)} in the long half of the range at most`;
      case 'hold':
        return `hold ${at[stage.at]}, ${stage.maxSeconds} s at most`;
      case 'lower':
        return `lower ${times(stage.maxLowerings)}, ${stage.secondsEach} s each`;
    }
  },
  chain: (stages: readonly string[]) => {
    const whole = stages.join(', then ');
    return `${whole.charAt(0).toUpperCase()}${whole.slice(1)}`;
  },
  chart: 'Strength left over the seconds of the set, and what each kind of work asks for',
  chartLighter: 'Strength left over the seconds of the set; the lines are those of the whole load',
  lines: {
    lift: (percent: string) => `lifting ends at ${percent}`,
    hold: (percent: string) => `holding ends at ${percent}`,
    lower: (percent: string) => `lowering ends at ${percent}`,
  },
  drawing: (stages: readonly string[], seconds: string, left: string) =>
    `Strength left falls from 100 % to about ${left} over ${seconds} s: ${stages.join(', ')}.`,
  stageSays: (name: string, count: string, unit: string) => `${inSentence(name)} ${count} ${unit}`,
  refusedLabel: 'Past lifting failure like this',
  refused: 'Not offered here',
  refusedSays: (count: number) =>
    count === 1
      ? 'One thing speaks against it. It stands below.'
      : `${count} things speak against it. They stand below.`,
  why: 'Why not',
  allReasons: 'Everything against it',
  nearest: (chain: string) => `Instead: ${inSentence(chain)}`,
  stopShort: (count: number) => `End the set with ${count} or more repetitions left.`,
  otherExercise: 'Which exercise can be left at any point?',
  whenAgain: 'When may these muscles be trained hard again?',
  otherLoad: 'Which load fails within these reps?',
  warmUp: 'Warm up to it',
  howLong: 'How long is the lifting?',
  live: {
    open: 'Do this set now, step by step',
    resume: 'Back to the set that is running',
  },
} as const;
