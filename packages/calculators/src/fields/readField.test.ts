import { describe, expect, it } from 'vitest';
import type {
  Field,
  LoadField,
  ManyField,
  NumberField,
  RowsField,
  TextField,
  WindowField,
} from './Field.ts';
import { readField } from './readField.ts';

const face = { label: 'Field', help: 'Help.' };
const reps: NumberField = {
  ...face,
  kind: 'number',
  unit: 'reps',
  min: 1,
  max: 20,
  step: 1,
  default: 8,
};
const seconds: NumberField = { ...reps, unit: 's', min: 0.2, max: 1, step: 0.1, default: 1 };
const window: WindowField = {
  ...face,
  kind: 'window',
  unit: 'reps',
  min: 1,
  max: 30,
  default: { low: 6, high: 8 },
};
const load: LoadField = {
  ...face,
  kind: 'load',
  minKg: 1,
  maxKg: 300,
  step: { kg: 2.5, lb: 5 },
  default: { value: 60, unit: 'kg' },
};
const notes: TextField = { ...face, kind: 'text', maxLength: 12, default: null };
const here: ManyField = {
  ...face,
  kind: 'many',
  options: ['rack', 'cable', 'chair'].map((id) => ({ id, label: id })),
  default: [],
};
const plates: RowsField = {
  ...face,
  kind: 'rows',
  columns: { weight: load, pieces: { ...reps, min: 0 } },
  rowName: 'Plate',
  minRows: 1,
  maxRows: 3,
  layout: 'line',
  default: [],
};

const value = (field: Field, text: string) => {
  const read = readField(field, text);
  return read.ok ? read.value : read.problems.map(({ message }) => message).join(' ');
};

describe('readField', () => {
  it.each([
    [reps, '8', 8],
    [reps, ' 8 ', 8],
    [seconds, '0,5', 0.5],
    [seconds, '.5', 0.5],
    [window, '6-8', { low: 6, high: 8 }],
    [window, '6 \u2013 8', { low: 6, high: 8 }],
    [window, '8', { low: 8, high: 8 }],
    [load, '62,5', { value: 62.5, unit: 'kg' }],
    [load, '135 lbs', { value: 135, unit: 'lb' }],
    [notes, ' no squats ', 'no squats'],
    [here, '', []],
    [here, 'chair, rack,rack', ['rack', 'chair']],
    [
      plates,
      '20kg_2~45lb_4',
      [
        { weight: { value: 20, unit: 'kg' }, pieces: 2 },
        { weight: { value: 45, unit: 'lb' }, pieces: 4 },
      ],
    ],
  ] as const)('reads %#: %o', (field, text, expected) => {
    expect(value(field, text)).toEqual(expected);
  });

  it.each([
    [reps, '8.5', 'Write a whole number from 1 to 20 reps.'],
    [reps, '21', 'This takes a value from 1 to 20 reps.'],
    [reps, 'eight', 'Write a whole number from 1 to 20 reps.'],
    [
      seconds,
      'half',
      'Write one number from 0.2 to 1 s, for example with a decimal comma or point.',
    ],
    [reps, '', 'This one is needed. Write a value.'],
    [window, '10-6', 'The first count must not be above the second. Did you mean 6-10?'],
    [
      window,
      '6-31',
      'Write the lowest and the highest count, both from 1 to 30 reps, such as 6-10.',
    ],
    [notes, 'no squats, no rows', 'Write at most 12 characters.'],
    [here, 'rack,sofa', 'Choose one of: rack, cable, chair.'],
    [load, '301kg', 'This takes a value from 1 to 300 kg.'],
    [plates, '', 'Give at least 1 and at most 3 (plate).'],
    [plates, '20kg', 'Plate 1: This row is damaged: it needs 2 values.'],
    [
      plates,
      '20kg_2~999kg_x',
      'Plate 2: This takes a value from 1 to 300 kg. Plate 2: Write a whole number from 0 to 20 reps.',
    ],
  ] as const)('refuses %#: %o', (field, text, message) => {
    expect(value(field, text)).toBe(message);
  });

  it('says in which row and column a value is wrong', () => {
    const read = readField(plates, '20kg_2~20kg_x');
    expect(read.ok ? [] : read.problems.map(({ path }) => path)).toEqual([[1, 'pieces']]);
  });

  it('reads an optional field that is empty as null', () => {
    expect(value({ ...load, optional: true }, ' ')).toBeNull();
  });
});
