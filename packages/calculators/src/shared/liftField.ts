import { enduranceCurves, generalCurve, type SourcedRepCurve } from '@windlass/core/strength';
import type { ChoiceField } from '../fields/Field.ts';

/** The kind of lift, as far as it matters to how fast repetitions run out. */
export const liftField = {
  kind: 'choice',
  label: 'Kind of lift',
  help: 'Small muscles lose repetitions faster as the load grows.',
  options: [
    { id: 'any', label: 'Not in this list' },
    { id: 'pull', label: 'Pull: row, pulldown, chin-up' },
    { id: 'press', label: 'Press lying, dip, push-up' },
    { id: 'overhead-press', label: 'Press overhead' },
    { id: 'squat', label: 'Squat, split squat' },
    { id: 'leg-press', label: 'Leg press' },
    { id: 'hinge', label: 'Hip hinge, deadlift' },
    { id: 'leg-isolation', label: 'One joint of the leg' },
    { id: 'arm-isolation', label: 'One joint of the arm' },
    { id: 'trunk', label: 'Trunk' },
  ],
  default: 'pull',
} as const satisfies ChoiceField;

export type LiftId = (typeof liftField)['options'][number]['id'];

/** The rep curve to start from. */
export function curveOf(lift: LiftId): SourcedRepCurve {
  return lift === 'any' ? generalCurve : enduranceCurves[lift];
}

/** The same curve as code, and what it imports. */
export function curveCode(lift: LiftId): { readonly name: string; readonly code: string } {
  if (lift === 'any') return { name: 'generalCurve', code: 'generalCurve' };
  return { name: 'enduranceCurves', code: `enduranceCurves['${lift}']` };
}
