import { describe, expect, it } from 'vitest';
import { addLoads } from './addLoads.ts';
import { kg } from './kg.ts';
import { lb } from './lb.ts';
import { loadFromValue } from './loadFromValue.ts';
import { loadValue } from './loadValue.ts';

describe('loadValue', () => {
  it('gives pounds where pounds are exact', () => {
    expect(loadValue(lb(2.5), 'lb')).toEqual({ value: 2.5, unit: 'lb' });
    expect(loadValue(lb(-35), 'lb')).toEqual({ value: -35, unit: 'lb' });
  });

  it('gives kilograms where pounds would lose something', () => {
    expect(loadValue(addLoads(kg(20), lb(45)), 'lb')).toEqual({ value: 40.41165665, unit: 'kg' });
  });

  it('does not drift over many round trips', () => {
    let load = addLoads(kg(20), lb(45), lb(2.5));
    for (let turn = 0; turn < 1000; turn++) {
      load = loadFromValue(loadValue(load, turn % 2 === 0 ? 'lb' : 'kg'));
    }
    expect(load).toBe(addLoads(kg(20), lb(45), lb(2.5)));
  });
});
