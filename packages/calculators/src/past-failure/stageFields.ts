import type { Stage } from '@windlass/core/extension';
import { stageAmounts } from '@windlass/core/extension';
import type { Fields, Texts } from '../fields/Field.ts';
import { said } from './words.ts';

/** What can come after lifting failure, as the form offers it. */
export type StageChoice =
  | 'none'
  | 'lighter'
  | 'pause'
  | 'assisted'
  | 'part-range'
  | 'hold-stretched'
  | 'hold-middle'
  | 'hold-contracted'
  | 'lower';

const choices: readonly StageChoice[] = [
  'none',
  'lighter',
  'pause',
  'assisted',
  'part-range',
  'hold-stretched',
  'hold-middle',
  'hold-contracted',
  'lower',
];

/** The places for stages, in order. */
export const places = ['stage1', 'stage2', 'stage3', 'stage4', 'stage5', 'stage6'] as const;

/** A place is shown when it is taken, or when the one before it is. */
function stageField<Default extends StageChoice>(place: number, first: Default) {
  const options = choices.map((id) => ({ id, label: said.stageChoices[id] }));
  const names = places.slice(Math.max(0, place - 2), place);
  return {
    kind: 'choice',
    label: said.place(place),
    help: said.placeHelp(place),
    options,
    default: first,
    ...(place > 2 && { when: (texts: Texts) => names.some((name) => texts[name] !== 'none') }),
  } as const;
}

const { holdSeconds, loweringSeconds, lowerings, partReps, pauseSeconds, assistedReps } =
  stageAmounts;

/** An amount is shown when a stage takes it. */
export const usedBy = (kind: Stage['kind']) => (texts: Texts) =>
  places.some((name) => texts[name]?.startsWith(kind) ?? false);

const counted = { kind: 'number', step: 1 } as const;

/** Up to six stages in their order, and how much of each. */
export const stageFields = {
  stage1: stageField(1, 'hold-contracted'),
  stage2: stageField(2, 'lower'),
  stage3: stageField(3, 'none'),
  stage4: stageField(4, 'none'),
  stage5: stageField(5, 'none'),
  stage6: stageField(6, 'none'),
  holdSeconds: {
    ...counted,
    ...holdSeconds,
    label: 'Hold at most',
    help: 'It ends sooner if the load slips.',
    unit: 's',
    default: 10,
    when: usedBy('hold'),
  },
  lowerings: {
    ...counted,
    ...lowerings,
    label: 'Lowerings at most',
    help: 'They end sooner if one is too fast.',
    unit: '',
    default: 4,
    when: usedBy('lower'),
  },
  lowerSeconds: {
    ...counted,
    ...loweringSeconds,
    label: 'Each lowering takes',
    help: 'Under four fifths of it, or 4 s, control is lost.',
    unit: 's',
    default: 5,
    when: usedBy('lower'),
  },
  partReps: {
    ...counted,
    ...partReps,
    label: 'Part-range reps at most',
    help: 'In the half of the range where the muscle is long.',
    unit: 'reps',
    default: 5,
    when: usedBy('part-range'),
  },
  lighterPercent: {
    kind: 'number',
    label: 'Load left each time',
    help: 'Of the load just before, changed within about 5 s.',
    unit: '%',
    min: stageAmounts.lighterShare.min * 100,
    max: stageAmounts.lighterShare.max * 100,
    step: 5,
    default: 80,
    when: usedBy('lighter'),
  },
  pauseSeconds: {
    ...counted,
    ...pauseSeconds,
    label: 'Pause',
    help: 'Load down, then lift on.',
    unit: 's',
    default: 15,
    when: usedBy('pause'),
  },
  helpReps: {
    ...counted,
    ...assistedReps,
    label: 'Reps with help',
    help: 'The partner lifts what is missing and no more.',
    unit: 'reps',
    default: 1,
    when: usedBy('assisted'),
  },
} as const satisfies Fields;

/** The values of these fields. */
export interface StageInput {
  readonly stage1: StageChoice;
  readonly stage2: StageChoice;
  readonly stage3: StageChoice;
  readonly stage4: StageChoice;
  readonly stage5: StageChoice;
  readonly stage6: StageChoice;
  readonly holdSeconds: number;
  readonly lowerings: number;
  readonly lowerSeconds: number;
  readonly partReps: number;
  readonly lighterPercent: number;
  readonly pauseSeconds: number;
  readonly helpReps: number;
}
