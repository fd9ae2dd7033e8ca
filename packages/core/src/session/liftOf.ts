import {
  applyVariant,
  canLoad,
  type Exercise,
  findExercise,
  heldWeights,
  sharesOf,
  type Variant,
} from '../anatomy/index.ts';
import type { MuscleShares } from '../capacity/index.ts';
import {
  type Equipment,
  type EquipmentUse,
  type Gym,
  type LoadList,
  reachableLoads,
} from '../equipment/index.ts';
import type { LoadValue } from '../load/index.ts';
import type { LiftIntent } from './Intent.ts';

/** An exercise on a piece of equipment, and every load that can be made for it. */
export interface Lift {
  readonly kind: 'lift';
  readonly intent: LiftIntent;
  /** With its set-up applied. */
  readonly exercise: Exercise;
  readonly variant?: Variant;
  readonly equipment: Equipment;
  readonly use: EquipmentUse;
  readonly shares: MuscleShares;
  readonly loads: LoadList;
}

/** Why an exercise that was asked for cannot be done here. */
export interface NoLift {
  readonly kind: 'no-lift';
  readonly reason:
    | 'unknown-exercise'
    | 'unknown-variant'
    | 'unknown-equipment'
    | 'wrong-equipment'
    | 'no-repetitions'
    | 'no-loads';
  readonly message: string;
}

/** The exercise and the equipment of an intent, or why the two do not make a lift. */
export function liftOf(
  intent: LiftIntent,
  gym: Gym,
  bodyWeight: LoadValue | undefined,
): Lift | NoLift {
  const found = findExercise(intent.exercise);
  if (found.kind === 'unknown') {
    const message = `There is no exercise "${found.id}". Near it: ${found.nearest.join(', ')}.`;
    return { kind: 'no-lift', reason: 'unknown-exercise', message };
  }
  const variant = found.exercise.variants.find(({ id }) => id === intent.variant);
  if (intent.variant !== undefined && !variant) {
    const ids = found.exercise.variants.map(({ id }) => id);
    const message = `${found.exercise.name} has no set-up "${intent.variant}". It has: ${ids.join(', ') || 'none'}.`;
    return { kind: 'no-lift', reason: 'unknown-variant', message };
  }
  const exercise = variant ? applyVariant(found.exercise, variant) : found.exercise;
  const equipment = gym.equipment.find(({ id }) => id === intent.equipment);
  if (!equipment) {
    const ids = gym.equipment.map(({ id }) => id);
    const message = `${gym.name} has no equipment "${intent.equipment}". It has: ${ids.join(', ')}.`;
    return { kind: 'no-lift', reason: 'unknown-equipment', message };
  }
  if (!canLoad(exercise, equipment)) {
    const message = `${exercise.name} is not done on ${equipment.name} (${equipment.kind}). It takes: ${exercise.loads.join(', ')}.`;
    return { kind: 'no-lift', reason: 'wrong-equipment', message };
  }
  if (exercise.timed) {
    const message = `${exercise.name} is held or carried for seconds: it has no repetitions to plan.`;
    return { kind: 'no-lift', reason: 'no-repetitions', message };
  }
  const use = useOf(exercise, gym, bodyWeight);
  const loads = reachableLoads(equipment, use);
  if (loads.kind === 'none') return { kind: 'no-lift', reason: 'no-loads', message: loads.message };
  return {
    kind: 'lift',
    intent,
    exercise,
    ...(variant && { variant }),
    equipment,
    use,
    shares: sharesOf(exercise),
    loads,
  };
}

/** How an exercise uses equipment: one hand or two, and how much of the body. */
export function useOf(
  exercise: Exercise,
  gym: Gym,
  bodyWeight: LoadValue | undefined,
): EquipmentUse {
  return {
    plates: gym.plates,
    hands: heldWeights(exercise),
    ...(bodyWeight && { bodyWeight }),
    ...(exercise.movedShare && { movedShare: exercise.movedShare }),
  };
}
