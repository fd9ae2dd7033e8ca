import { expect, it } from 'vitest';
import { defineCalculator } from '../contract/defineCalculator.ts';
import { decodeAddress } from './decodeAddress.ts';
import { encodeAddress } from './encodeAddress.ts';

it('leaves a text out that is too long for an address', () => {
  const note = {
    kind: 'text',
    label: 'Note',
    help: 'Any words.',
    maxLength: 100,
    default: '',
    inAddressUpTo: 5,
  } as const;
  const calculator = defineCalculator({
    id: 'note',
    title: 'Note',
    question: 'What was noted?',
    fields: { note },
    groups: [{ legend: 'Note', fields: ['note'] }],
    compute: () => ({ kind: 'none', reason: 'none', headline: 'None', message: 'None.' }),
    headline: () => ({ label: '', value: '', unit: '', exact: 0 }),
    certainty: () => ({ kind: 'exact', says: '' }),
    why: () => ({ formula: '', steps: [], restsOn: '' }),
    cautions: () => [],
    sources: () => [],
    next: () => [],
    snippet: () => '',
    view: () => null,
  });
  expect(encodeAddress(calculator, { note: 'short' })).toBe('note=short');
  expect(encodeAddress(calculator, { note: 'longer' })).toBe('');
  expect(decodeAddress(calculator, 'note=longer').texts.note).toBe('longer');
});
