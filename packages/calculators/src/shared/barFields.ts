import type { Barbell, PlateStock } from '@windlass/core/equipment';
import type { LoadValue } from '@windlass/core/load';
import type { Fields } from '../fields/Field.ts';
import { boathouse } from './boathouse.ts';

/** Which bar, and the plates of the gym: the same in every calculator that loads a bar. */
export const barFields = {
  bar: {
    kind: 'choice',
    label: 'Bar',
    help: 'Two bars can look alike and weigh 5 kg apart. Weigh it once and write it on the cap.',
    options: [
      { id: '20kg', label: '20 kg' },
      { id: '15kg', label: '15 kg' },
      { id: 'other', label: 'Another' },
    ],
    default: '20kg',
  },
  barWeight: {
    kind: 'load',
    label: 'Weight of the bar',
    help: 'As weighed, without collars.',
    minKg: 1,
    maxKg: 60,
    step: { kg: 0.5, lb: 1 },
    default: { value: 45, unit: 'lb' },
    when: (texts) => texts.bar === 'other',
  },
  collar: {
    kind: 'load',
    label: 'One collar',
    help: 'Spring collars are near 0.2 kg, locking ones up to 2.5 kg. Both sides count.',
    minKg: 0,
    maxKg: 5,
    step: { kg: 0.25, lb: 0.5 },
    default: { value: 0, unit: 'kg' },
  },
  plates: {
    kind: 'rows',
    label: 'Plates, by the piece',
    help: 'Kilogram and pound plates mix. An odd piece stays on the rack.',
    columns: {
      weight: {
        kind: 'load',
        label: 'weight',
        help: 'What is written on it.',
        minKg: 0.1,
        maxKg: 60,
        step: { kg: 1.25, lb: 2.5 },
        default: { value: 5, unit: 'kg' },
      },
      pieces: {
        kind: 'number',
        label: 'pieces',
        help: 'How many there are.',
        unit: '',
        min: 0,
        max: 20,
        step: 1,
        default: 2,
      },
    },
    rowName: 'Plate',
    minRows: 0,
    maxRows: 14,
    layout: 'line',
    default: boathouse.plates,
  },
} as const satisfies Fields;

/** The values of these fields. */
export interface BarInput {
  readonly bar: '20kg' | '15kg' | 'other';
  readonly barWeight: LoadValue;
  readonly collar: LoadValue;
  readonly plates: readonly PlateStock[];
}

/** The weight of the bar that was chosen. */
export function weightOfBar({ bar, barWeight }: BarInput): LoadValue {
  return bar === 'other' ? barWeight : { value: bar === '20kg' ? 20 : 15, unit: 'kg' };
}

/** The bar as equipment. */
export function barbellOf(input: BarInput): Barbell {
  const bar = weightOfBar(input);
  const { collar } = input;
  return {
    kind: 'barbell',
    id: 'bar',
    name: 'Bar',
    bar,
    ...(collar.value > 0 ? { collar } : {}),
  };
}
