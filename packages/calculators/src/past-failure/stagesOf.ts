import type { Stage } from '@windlass/core/extension';
import { places, type StageChoice, type StageInput } from './stageFields.ts';

/** The chain that the form asks for: lifting to failure, then what was chosen, in its order. */
export function stagesOf(input: StageInput): readonly Stage[] {
  const after = places.flatMap((name) => stageOf(input[name], input) ?? []);
  return [{ kind: 'lift' }, ...after];
}

function stageOf(choice: StageChoice, input: StageInput): Stage | undefined {
  switch (choice) {
    case 'none':
      return undefined;
    case 'lighter':
      return { kind: 'lighter', loadShare: input.lighterPercent / 100 };
    case 'pause':
      return { kind: 'pause', seconds: input.pauseSeconds };
    case 'assisted':
      return { kind: 'assisted', reps: input.helpReps };
    case 'part-range':
      return { kind: 'part-range', maxReps: input.partReps };
    case 'hold-stretched':
      return { kind: 'hold', at: 'stretched', maxSeconds: input.holdSeconds };
    case 'hold-middle':
      return { kind: 'hold', at: 'middle', maxSeconds: input.holdSeconds };
    case 'hold-contracted':
      return { kind: 'hold', at: 'contracted', maxSeconds: input.holdSeconds };
    case 'lower':
      return { kind: 'lower', secondsEach: input.lowerSeconds, maxLowerings: input.lowerings };
  }
}

/** The form's values for a chain that opens with lifting; amounts that it has no stage for stay. */
export function inputOfStages(stages: readonly Stage[], input: StageInput): StageInput {
  const chosen = places.map((name, at) => [name, choiceOf(stages[at + 1])]);
  const amounts: Partial<StageInput> = Object.assign({}, ...stages.map(amountOf));
  return { ...input, ...Object.fromEntries(chosen), ...amounts };
}

function choiceOf(stage: Stage | undefined): StageChoice {
  if (stage?.kind === 'hold') return `hold-${stage.at}`;
  return stage === undefined || stage.kind === 'lift' ? 'none' : stage.kind;
}

function amountOf(stage: Stage): Partial<StageInput> {
  switch (stage.kind) {
    case 'lift':
      return {};
    case 'lighter':
      return { lighterPercent: Math.round(stage.loadShare * 1e4) / 100 };
    case 'pause':
      return { pauseSeconds: stage.seconds };
    case 'assisted':
      return { helpReps: stage.reps };
    case 'part-range':
      return { partReps: stage.maxReps };
    case 'hold':
      return { holdSeconds: stage.maxSeconds };
    case 'lower':
      return { lowerSeconds: stage.secondsEach, lowerings: stage.maxLowerings };
  }
}
