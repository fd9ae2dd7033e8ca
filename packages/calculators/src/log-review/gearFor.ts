import type { Equipment, EquipmentUse } from '@windlass/core/equipment';
import { type LoadValue, loadFromValue, loadValue, scaleLoad } from '@windlass/core/load';
import type { LoggedSet } from '@windlass/core/progress';
import type { ReviewLift } from '../precomputed/reviewLifts.ts';
import { type GearInput, gearOf } from '../shared/gearFields.ts';
import type { LogReviewInput } from './fields.ts';

/** What a lift is loaded with, and how. */
export interface InUse {
  readonly equipment: Equipment;
  readonly use: EquipmentUse;
}

type GearKind = GearInput['gear'] | 'body';

const HELP_STEPS = 12;

/** The equipment that the form names, or that the lift was last logged with. */
export function gearFor(
  input: LogReviewInput,
  last: LoggedSet,
  lift: ReviewLift | undefined,
): InUse {
  const gear: GearKind = input.gear === 'log' ? BY_COUNTS[last.counts] : input.gear;
  if (gear !== 'body') return gearOf({ ...input, gear });
  const bodyWeight = input.bodyWeight ?? last.bodyWeight;
  const { plates, helpStep } = input;
  return {
    equipment: {
      kind: 'body',
      id: 'station',
      name: 'the station',
      belt: { base: { value: 0, unit: 'kg' }, plates },
      ...(helpStep ? { assistance: helpsOf(helpStep) } : {}),
    },
    use: {
      ...(bodyWeight ? { bodyWeight } : {}),
      ...(lift?.movedShare ? { movedShare: lift.movedShare } : {}),
    },
  };
}

const BY_COUNTS: Readonly<Record<LoggedSet['counts'], GearKind>> = {
  total: 'bar',
  plates: 'bar',
  'each-hand': 'dumbbells',
  stack: 'stack',
  added: 'body',
};

function helpsOf(step: LoadValue): readonly LoadValue[] {
  return Array.from({ length: HELP_STEPS }, (_, place) =>
    loadValue(scaleLoad(loadFromValue(step), place + 1), step.unit),
  );
}
