import { expect, it } from 'vitest';
import { evidenceFigures } from './evidenceFigures.ts';
import { evidenceModel } from './evidenceModel.ts';

it('has a source for every figure that the evidence is weighed by', () => {
  expect(Object.keys(evidenceModel)).toEqual(Object.keys(evidenceFigures));
  for (const [name, { value, source }] of Object.entries(evidenceModel)) {
    expect(value).toBe(evidenceFigures[name as keyof typeof evidenceFigures]);
    expect(source.citation).not.toBe('');
  }
});
