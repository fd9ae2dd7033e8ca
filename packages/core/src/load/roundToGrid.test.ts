import { describe, expect, it } from 'vitest';
import { isOnGrid } from './isOnGrid.ts';
import { kg } from './kg.ts';
import { lb } from './lb.ts';
import { roundToGrid } from './roundToGrid.ts';
import { scaleLoad } from './scaleLoad.ts';

const step = kg(2.5);

describe('roundToGrid', () => {
  it('takes a tie to the lighter load, every time', () => {
    const exact = scaleLoad(kg(125), 65, 100); // 81.25 kg, half way between 80 and 82.5
    expect(roundToGrid(exact, { step }, 'down')).toBe(kg(80));
    expect(roundToGrid(exact, { step }, 'nearest')).toBe(kg(80));
    expect(roundToGrid(exact, { step }, 'up')).toBe(kg(82.5));
    expect(roundToGrid(kg(-81.25), { step }, 'nearest')).toBe(kg(-82.5));
  });

  it.each(['down', 'nearest', 'up'] as const)(
    'leaves an exact multiple alone when going %s',
    (rule) => {
      expect(roundToGrid(scaleLoad(kg(175), 70, 100), { step }, rule)).toBe(kg(122.5));
      expect(roundToGrid(scaleLoad(kg(50), 110, 100), { step }, rule)).toBe(kg(55));
    },
  );

  it('starts a bar of plates at the bar', () => {
    const bar = { step: kg(5), start: kg(20) };
    expect(roundToGrid(kg(62), bar, 'nearest')).toBe(kg(60));
    expect(roundToGrid(kg(63), bar, 'nearest')).toBe(kg(65));
    expect(roundToGrid(kg(18), bar, 'down')).toBe(kg(15));
  });

  it('knows pound grids from kilogram grids', () => {
    expect(isOnGrid(lb(45), { step: lb(2.5) })).toBe(true);
    expect(isOnGrid(lb(45), { step: kg(2.5) })).toBe(false);
    expect(isOnGrid(kg(0.3), { step: kg(0.1) })).toBe(true);
    expect(isOnGrid(kg(17.5), { step: kg(5), start: kg(2.5) })).toBe(true);
    expect(isOnGrid(kg(-7.5), { step })).toBe(true);
  });

  it('refuses a step of nothing', () => {
    expect(() => roundToGrid(kg(20), { step: kg(0) }, 'nearest')).toThrow(/roundToGrid: step/);
    expect(() => isOnGrid(kg(20), { step: kg(-1) })).toThrow(/isOnGrid: step/);
  });
});
