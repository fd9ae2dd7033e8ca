import type { LiveSetEvent, LiveSetPlan } from './LiveSet.ts';
import type { Stage, StageKind } from './Stage.ts';
import { stageRules } from './stageRules.ts';

type Begin = Extract<LiveSetEvent['kind'], 'lifting-resumed' | 'hold-begun' | 'lowering-begun'>;

/** What each begin can begin. */
const begins: Readonly<Record<Begin, readonly StageKind[]>> = {
  'lifting-resumed': ['lighter', 'pause', 'assisted', 'part-range'],
  'hold-begun': ['hold'],
  'lowering-begun': ['lower'],
};

/**
 * The stage that an event begins, between two stages: the next of its kind in the plan that may
 * follow the one just done, so that a stage can be left out but none done out of order. A
 * lowering goes on with the stage of lowerings already begun.
 *
 * @returns its index, or null when the event begins nothing here.
 */
export function stageAfter(plan: LiveSetPlan, current: number, begin: Begin): number | null {
  const { kind } = plan.stages[current] as Stage;
  if (kind === 'lower' && begin === 'lowering-begun') return current;
  const found = plan.stages.findIndex(
    (stage, index) =>
      index > current &&
      begins[begin].includes(stage.kind) &&
      stageRules[stage.kind].after.includes(kind),
  );
  return found === -1 ? null : found;
}
