import { expect, it } from 'vitest';
import { healthAnswer } from './healthAnswer.ts';

const draft = {
  symptoms: [],
  conditions: ['kidney', 'metabolic'],
  complaints: [{ kind: 'wrist', redFlags: [] }],
  activity: 'active',
  ageYears: 41,
};

it.each([
  ['symptoms', {}, 'none'],
  ['conditions', { kidney: 'Kidneys' }, 'Kidneys, metabolic'],
  ['complaints', { wrist: 'Wrist' }, 'Wrist'],
  ['activity', { active: 'yes' }, 'yes'],
  ['ageYears', {}, '41'],
  ['pregnancy', {}, 'not asked'],
])('the answer about %s', (field, choices, said) => {
  expect(healthAnswer(draft, [field], choices)).toBe(said);
});
