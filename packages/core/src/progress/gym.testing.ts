import type { Barbell, FixedWeights, SelectorStack } from '../equipment/index.ts';
import { reachableLoads } from '../equipment/index.ts';
import type { LoadValue } from '../load/index.ts';
import { kg, loadFromValue } from '../load/index.ts';
import { dayNumber } from '../recovery/index.ts';
import type { LiftSession, SessionSet } from './LiftSession.ts';

/** A 20 kg bar with pairs of plates. */
export function barWith(...plates: readonly number[]) {
  const equipment: Barbell = {
    kind: 'barbell',
    id: 'bar',
    name: 'Bar',
    bar: { value: 20, unit: 'kg' },
  };
  const stock = plates.map((value) => ({ weight: { value, unit: 'kg' as const }, pieces: 8 }));
  return { equipment, loads: reachableLoads(equipment, { plates: stock }, { heaviest: kg(200) }) };
}

/** Pairs of dumbbells. */
export function rackOf(unit: LoadValue['unit'], ...values: readonly number[]) {
  const equipment: FixedWeights = {
    kind: 'fixed',
    form: 'dumbbell',
    id: 'rack',
    name: 'Rack',
    weights: values.map((value) => ({ weight: { value, unit }, pieces: 2 })),
  };
  return { equipment, loads: reachableLoads(equipment) };
}

/** A stack of 5 kg plates up to 150 kg, one to one. */
export function stack() {
  const equipment: SelectorStack = {
    kind: 'stack',
    id: 'stack',
    name: 'Leg press',
    pulleyRatio: 1,
    first: { value: 5, unit: 'kg' },
    rest: [{ weight: { value: 5, unit: 'kg' }, pieces: 29 }],
  };
  return { equipment, loads: reachableLoads(equipment) };
}

/** A session with the same load in every set. */
export function sessionOn(
  date: string,
  load: LoadValue,
  reps: readonly number[],
  more: Partial<SessionSet> & { readonly tags?: readonly string[] } = {},
): LiftSession {
  const { tags = [], ...rest } = more;
  const sets = reps.map((count) => ({
    ...rest,
    load: loadFromValue(load),
    shown: loadFromValue(load),
    reps: count,
  }));
  return { date, day: dayNumber(date), sets: sets as [SessionSet, ...SessionSet[]], tags };
}
