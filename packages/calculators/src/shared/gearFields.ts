import type { Equipment, EquipmentUse, PieceStock } from '@windlass/core/equipment';
import type { LoadValue } from '@windlass/core/load';
import type { Fields } from '../fields/Field.ts';
import { type BarInput, barbellOf, barFields } from './barFields.ts';
import { boathouse } from './boathouse.ts';

const forDumbbells = {
  when: (texts: Readonly<Record<string, string>>) => texts.gear === 'dumbbells',
};
const forStack = { when: (texts: Readonly<Record<string, string>>) => texts.gear === 'stack' };
const forBar = (texts: Readonly<Record<string, string>>) => texts.gear === 'bar';

/** What the load is made of: a bar with plates, dumbbells of the rack, or a stack with a pin. */
export const gearFields = {
  gear: {
    kind: 'choice',
    label: 'Lifted with',
    help: 'Only loads that this can make are offered.',
    options: [
      { id: 'bar', label: 'Bar' },
      { id: 'dumbbells', label: 'Dumbbells' },
      { id: 'stack', label: 'Stack' },
    ],
    default: 'bar',
  },
  bar: { ...barFields.bar, when: forBar },
  barWeight: {
    ...barFields.barWeight,
    when: (texts) => forBar(texts) && texts.bar === 'other',
  },
  collar: { ...barFields.collar, when: forBar },
  plates: { ...barFields.plates, when: forBar },
  dumbbells: {
    kind: 'rows',
    label: 'Dumbbells, by the piece',
    help: 'Two of one weight make a pair. A load is that of one hand.',
    columns: barFields.plates.columns,
    rowName: 'Dumbbell',
    minRows: 0,
    maxRows: 30,
    layout: 'line',
    default: boathouse.dumbbells,
    ...forDumbbells,
  },
  stackFirst: {
    kind: 'load',
    label: 'Top plate',
    help: 'With the pin in the first hole.',
    minKg: 0.5,
    maxKg: 60,
    step: { kg: 1, lb: 2.5 },
    default: boathouse.stack.first,
    ...forStack,
  },
  stackStep: {
    kind: 'load',
    label: 'Each plate below it',
    help: 'How far the number rises from hole to hole.',
    minKg: 0.5,
    maxKg: 25,
    step: { kg: 1, lb: 2.5 },
    default: boathouse.stack.step,
    ...forStack,
  },
  stackPlates: {
    kind: 'number',
    label: 'Plates below the top one',
    help: 'Holes for the pin, less one.',
    unit: '',
    min: 0,
    max: 60,
    step: 1,
    default: boathouse.stack.plates,
    ...forStack,
  },
  pulley: {
    kind: 'choice',
    label: 'Pulley',
    help: 'At 2:1 the handle carries half of the number. Friction is not reckoned.',
    options: [
      { id: '1', label: '1:1' },
      { id: '2', label: '2:1' },
      { id: '4', label: '4:1' },
    ],
    default: '2',
    ...forStack,
  },
  addOn: {
    kind: 'load',
    label: 'Add-on weight',
    help: 'Laid on top of the stack for half a step. Empty where there is none.',
    optional: true,
    minKg: 0.1,
    maxKg: 10,
    step: { kg: 0.25, lb: 0.5 },
    default: boathouse.stack.addOn,
    ...forStack,
  },
} as const satisfies Fields;

/** The values of these fields. */
export interface GearInput extends BarInput {
  readonly gear: 'bar' | 'dumbbells' | 'stack';
  readonly dumbbells: readonly PieceStock[];
  readonly stackFirst: LoadValue;
  readonly stackStep: LoadValue;
  readonly stackPlates: number;
  readonly pulley: '1' | '2' | '4';
  readonly addOn: LoadValue | null;
}

/** What a gym has of its equipment, by name, in the order in which it is asked. */
export const gearStock = [
  'plates',
  'collar',
  'dumbbells',
  'stackFirst',
  'stackStep',
  'stackPlates',
  'pulley',
  'addOn',
] as const;

/** The equipment that was chosen, and how it is used. */
export function gearOf(input: GearInput): {
  readonly equipment: Equipment;
  readonly use: EquipmentUse;
} {
  const { gear, plates, dumbbells, stackFirst, stackStep, stackPlates, pulley, addOn } = input;
  if (gear === 'bar') return { equipment: barbellOf(input), use: { plates } };
  if (gear === 'dumbbells') {
    const rack = { id: 'rack', name: 'Dumbbells', weights: dumbbells };
    return { equipment: { kind: 'fixed', form: 'dumbbell', ...rack }, use: { hands: 2 } };
  }
  return {
    equipment: {
      kind: 'stack',
      id: 'stack',
      name: 'Stack',
      first: stackFirst,
      rest: [{ weight: stackStep, pieces: stackPlates }],
      ...(addOn ? { addOns: [{ weight: addOn, pieces: 1 }] } : {}),
      pulleyRatio: Number(pulley),
    },
    use: {},
  };
}
