import { describe, expect, it } from 'vitest';
import { barLoading } from '../bar-loading/definition.ts';
import { type Memory, recall, remember } from './remembered.ts';

function memory(): Memory {
  const kept = new Map<string, string>();
  return { getItem: (key) => kept.get(key) ?? null, setItem: (key, value) => kept.set(key, value) };
}

const refusing: Memory = {
  getItem: () => {
    throw new Error('refused');
  },
  setItem: () => {
    throw new Error('refused');
  },
};

describe('remember and recall', () => {
  it('offers the unit of the last visit again', () => {
    const browser = memory();
    remember(barLoading, 'show', 'lb', browser);
    expect(recall(barLoading, '', browser)).toBe('show=lb');
  });

  it('lets an address say otherwise', () => {
    const browser = memory();
    remember(barLoading, 'show', 'lb', browser);
    expect(recall(barLoading, 'show=kg', browser)).toBe('show=kg');
  });

  it('keeps nothing else', () => {
    const browser = memory();
    remember(barLoading, 'target', '100kg', browser);
    expect(recall(barLoading, '', browser)).toBe('');
  });

  it('lives with a browser that keeps nothing', () => {
    remember(barLoading, 'show', 'lb', refusing);
    expect(recall(barLoading, 'target=100kg', refusing)).toBe('target=100kg');
  });
});
