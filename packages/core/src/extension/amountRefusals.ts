import type { ChainRefusal } from './ChainRefusal.ts';
import { giessing } from './chainSources.ts';
import { refuse } from './refuse.ts';
import type { Stage } from './Stage.ts';
import { stageAmounts } from './stageAmounts.ts';

interface Amount {
  readonly value: number;
  readonly range: { readonly min: number; readonly max: number };
  readonly of: string;
  readonly why: string;
}

/** Refusals of a stage that asks for too little or too much. */
export function amountRefusals(stages: readonly Stage[]): readonly ChainRefusal[] {
  return stages.flatMap((stage, index) =>
    amountsOf(stage).flatMap(({ value, range: { min, max }, of, why }) => {
      if (value >= min && value <= max) return [];
      const sources = stage.kind === 'assisted' ? [giessing] : undefined;
      return [refuse('amount', index, why, `Ask for ${min} to ${max} ${of}.`, sources)];
    }),
  );
}

function amountsOf(stage: Stage): readonly Amount[] {
  switch (stage.kind) {
    case 'lift':
      return [];
    case 'lighter':
      return [
        {
          value: stage.loadShare,
          range: stageAmounts.lighterShare,
          of: 'of the load before, as a share',
          why: 'Less than a twentieth taken off changes nothing, and more than half makes it another exercise.',
        },
      ];
    case 'pause':
      return [
        {
          value: stage.seconds,
          range: stageAmounts.pauseSeconds,
          of: 'seconds',
          why: 'A shorter pause brings nothing back, and after a longer one it is another set.',
        },
      ];
    case 'assisted':
      return [
        {
          value: stage.reps,
          range: stageAmounts.assistedReps,
          of: 'repetitions',
          why: 'Help grows from about a fifth of the load on the first repetition past failure to a third on the second; more were not measured.',
        },
      ];
    case 'part-range':
      return [
        {
          value: stage.maxReps,
          range: stageAmounts.partReps,
          of: 'repetitions',
          why: 'A count is set before the set, so that it ends.',
        },
      ];
    case 'hold':
      return [
        {
          value: stage.maxSeconds,
          range: stageAmounts.holdSeconds,
          of: 'seconds',
          why: 'A hold shorter than that is part of a repetition, and a longer one means that the load is light.',
        },
      ];
    case 'lower':
      return [
        {
          value: stage.secondsEach,
          range: stageAmounts.loweringSeconds,
          of: 'seconds for each lowering',
          why: 'Faster than that control cannot be told, and slower than that it is a hold.',
        },
        {
          value: stage.maxLowerings,
          range: stageAmounts.lowerings,
          of: 'lowerings',
          why: 'A count is set before the set, so that it ends.',
        },
      ];
  }
}
