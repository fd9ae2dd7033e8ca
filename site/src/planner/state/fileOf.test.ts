import { describe, expect, it } from 'vitest';
import { examples } from './examples.ts';
import { fileOf } from './fileOf.ts';
import { readDraft } from './readDraft.ts';
import { setAt } from './tree.ts';

const rest = ['intent', 'lifts', 0, 'restSeconds'];
const messageAt = (typed: string) => {
  const read = readDraft(setAt(examples['pull-day'], rest, typed));
  return read.ok ? read.value.intent.lifts[0]?.restSeconds : read.problems[0]?.message;
};

describe('fileOf', () => {
  it('leaves a plan file as it is', () => {
    expect(fileOf(examples['leg-day'])).toEqual(examples['leg-day']);
  });

  it('reads typed numbers with a decimal comma or point, and only in number fields', () => {
    const draft = { client: { name: '12', health: { painLimit: '3,5', ageYears: ' 41 ' } } };
    expect(fileOf(draft)).toEqual({
      client: { name: '12', health: { painLimit: 3.5, ageYears: 41 } },
    });
  });

  it('keeps what is no number, for the reader to say what would be right', () => {
    expect(messageAt('150')).toBe(150);
    expect(messageAt('two')).toMatch(/whole number from 0 to 1800/);
    expect(messageAt('')).toMatch(/whole number from 0 to 1800/);
    expect(messageAt('90,5')).toMatch(/whole number from 0 to 1800/);
  });

  it('keeps loads as they were typed, decimal comma and unit included', () => {
    const read = readDraft(setAt(examples['pull-day'], ['client', 'bodyWeight'], '172,5lb'));
    expect(read.ok && read.value.client.bodyWeight).toEqual({ value: 172.5, unit: 'lb' });
  });
});
