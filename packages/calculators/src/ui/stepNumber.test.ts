import { describe, expect, it } from 'vitest';
import type { NumberField } from '../fields/Field.ts';
import { stepNumber } from './stepNumber.ts';

const field: NumberField = {
  kind: 'number',
  label: 'Step',
  help: '',
  unit: 'kg',
  min: 0.5,
  max: 10,
  step: 0.1,
  default: 1,
};

describe('stepNumber', () => {
  it('goes to the next multiple, without float dust', () => {
    expect(stepNumber(field, '0.7', 1)).toBe('0.8');
    expect(stepNumber(field, '0.3', -1)).toBe('0.5');
    expect(stepNumber({ ...field, step: 2.5 }, '6', 1)).toBe('7.5');
    expect(stepNumber({ ...field, step: 2.5 }, '6', -1)).toBe('5');
  });

  it('stays inside the range', () => {
    expect(stepNumber(field, '10', 1)).toBe('10');
    expect(stepNumber(field, '0.5', -1)).toBe('0.5');
  });

  it('starts from the default where the text is no number', () => {
    expect(stepNumber(field, 'two', 1)).toBe('1.1');
  });
});
