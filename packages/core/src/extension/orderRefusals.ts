import type { ChainRefusal } from './ChainRefusal.ts';
import { refuse } from './refuse.ts';
import type { Stage } from './Stage.ts';
import { stageAmounts } from './stageAmounts.ts';
import { stageRules } from './stageRules.ts';

/** Refusals that come from the order of the stages and from how often each comes. */
export function orderRefusals(stages: readonly Stage[]): readonly ChainRefusal[] {
  const max = stageAmounts.stages;
  if (stages.length === 0) {
    return [refuse('empty', null, 'There is no stage.', 'Begin with lifting to failure.')];
  }
  const tooLong =
    stages.length > max
      ? [refuse('too-long', max, `A set has ${max} stages at most.`, 'Leave out the later ones.')]
      : [];
  return [
    ...tooLong,
    ...stages.flatMap((_, index) => [...follows(stages, index), ...repeats(stages, index)]),
  ];
}

function follows(stages: readonly Stage[], index: number): readonly ChainRefusal[] {
  const { kind } = stages[index] as Stage;
  const rule = stageRules[kind];
  const before = stages[index - 1]?.kind;
  if (before === undefined) {
    if (kind === 'lift') return [];
    const why = `A set does not open with ${rule.name}. ${rule.why}`;
    return [refuse('opens-with-lift', 0, why, 'Put lifting to failure first.')];
  }
  if (rule.after.includes(before)) return [];
  const why = `${capital(rule.name)} cannot come right after ${stageRules[before].name}. ${rule.why}`;
  const names = rule.after.map((kind) => stageRules[kind].name).join('; ');
  const instead = names ? `It can come right after: ${names}.` : 'Put it first.';
  return [refuse('wrong-order', index, why, instead)];
}

function repeats(stages: readonly Stage[], index: number): readonly ChainRefusal[] {
  const { kind } = stages[index] as Stage;
  const rule = stageRules[kind];
  const count = stages.slice(0, index + 1).filter((stage) => stage.kind === kind).length;
  if (count !== rule.times + 1) return [];
  const often = rule.times === 1 ? 'once' : `${rule.times} times`;
  const why = `At most ${often} in a set: ${rule.name}.`;
  return [refuse('too-often', index, why, 'Leave out the repeat.')];
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
