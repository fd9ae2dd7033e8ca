import { formatLoad, kg, lb } from '@windlass/core/load';
import { describe, expect, it } from 'vitest';
import { dateWords } from './dateWords.ts';
import { dayWords } from './dayWords.ts';
import { durationWords } from './durationWords.ts';
import { numberAndUnit } from './numberAndUnit.ts';
import { windowWords } from './windowWords.ts';

describe('numberAndUnit', () => {
  it('takes the words of a load apart', () => {
    expect(numberAndUnit(`${formatLoad(kg(55.4), { unit: 'kg' })} in total, with the bar`)).toEqual(
      { mark: '', number: '55.4', unit: 'kg', counts: 'in total, with the bar' },
    );
    expect(numberAndUnit(formatLoad(lb(45), { unit: 'kg' }))).toEqual({
      mark: '≈',
      number: '20.41',
      unit: 'kg',
      counts: '',
    });
    expect(numberAndUnit(formatLoad(kg(-20), { unit: 'kg' })).number).toMatch(/^[-−]20$/);
  });

  it('leaves other words whole', () => {
    expect(numberAndUnit('body alone').counts).toBe('body alone');
  });
});

describe('durationWords', () => {
  it.each([
    [0, '0 s'],
    [45, '45 s'],
    [90, '90 s'],
    [91, '1 min 31 s'],
    [120, '2 min'],
    [150, '2 min 30 s'],
  ])('%d seconds are %s', (seconds, said) => {
    expect(durationWords(seconds)).toBe(said);
  });
});

describe('days', () => {
  // 15 March 2027 is a Monday: 2027-01-01 is a Friday, and 73 days later is ten weeks and three days.
  it('are said with their weekday, or without', () => {
    expect(dayWords('2027-03-15')).toBe('Monday 15 March 2027');
    expect(dateWords('2027-03-15')).toBe('15 March 2027');
  });

  it('stay as typed where they are none', () => {
    expect(dayWords('soon')).toBe('soon');
  });
});

it('a window of one count is one number', () => {
  expect(windowWords({ minReps: 8, maxReps: 11 })).toBe('8–11');
  expect(windowWords({ minReps: 8, maxReps: 8 })).toBe('8');
});
