import { expect, it } from 'vitest';
import { bad, good } from './Problem.ts';

it('an outcome is a value or problems, never both', () => {
  expect(good(62.5)).toEqual({ ok: true, value: 62.5 });
  const problem = { code: 'load.empty', path: [], message: 'Write a load.' };
  expect(bad(problem, problem)).toEqual({ ok: false, problems: [problem, problem] });
});
