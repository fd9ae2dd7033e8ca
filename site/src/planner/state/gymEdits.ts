import { type Json, listAt, setAt, textAt } from './tree.ts';

const EQUIPMENT = ['gym', 'equipment'];

/** Kinds of equipment, and what a new piece of each starts as. */
export const newEquipment = {
  barbell: { bar: '20 kg' },
  fixed: { form: 'dumbbell', weights: [{ weight: '10 kg', pieces: 2 }] },
  stack: { first: '5 kg', rest: [{ weight: '5 kg', pieces: 15 }], pulleyRatio: 1 },
  machine: { posts: 2, start: 'unknown' },
  body: { belt: {} },
  handles: { handle: '2 kg', handles: 2 },
  'one-post': { form: 'landmine', base: '10 kg' },
  band: {},
} as const satisfies Record<string, Json>;

export type EquipmentKind = keyof typeof newEquipment;

export const equipmentKinds = Object.keys(newEquipment) as readonly EquipmentKind[];

/** The draft with one more piece of equipment at the end of the gym, under an id of its own. */
export function addEquipment(draft: Json, kind: EquipmentKind, name: string): Json {
  const items = listAt(draft, EQUIPMENT);
  const taken = new Set(items.map((_, place) => textAt(draft, [...EQUIPMENT, place, 'id'])));
  let id: string = kind;
  for (let number = 2; taken.has(id); number += 1) id = `${kind}-${number}`;
  return setAt(draft, [...EQUIPMENT, items.length], { kind, id, name, ...newEquipment[kind] });
}
