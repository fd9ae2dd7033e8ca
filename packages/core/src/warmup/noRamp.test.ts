import { describe, expect, it } from 'vitest';
import { kg } from '../load/index.ts';
import { planRamp } from './planRamp.ts';
import type { RampQuestion } from './Ramp.ts';

const ramp = (rest: Partial<RampQuestion>) =>
  planRamp({
    equipment: { kind: 'barbell', id: 'bar', name: 'Bar', bar: { value: 20, unit: 'kg' } },
    use: { plates: [{ weight: { value: 10, unit: 'kg' }, pieces: 4 }] },
    work: kg(60),
    workShare: 0.7,
    experience: 'trained',
    ...rest,
  });

describe('no ramp', () => {
  it.each<[string, Partial<RampQuestion>, string]>([
    ['already-warm', { alreadyWarm: 1 }, 'rewarmup-2025'],
    ['light-work', { workShare: 0.5 }, 'ribeiro-a-2014'],
    ['light-work', { workShare: 0.5, alreadyWarm: 1 }, 'ribeiro-a-2014'],
    ['work-is-the-lightest-load', { work: kg(20) }, 'ribeiro-a-2014'],
  ])('%s for %j', (reason, rest, source) => {
    const answer = ramp(rest);
    if (answer.kind !== 'no-ramp') throw new Error(answer.kind);
    expect(answer.reason).toBe(reason);
    expect(answer.sources.map(({ id }) => id)).toEqual([source, 'windlass-ramp-shape']);
  });

  it('makes the work load at once, and takes it down: two tens on each end', () => {
    expect(ramp({ alreadyWarm: 1 })).toMatchObject({
      work: { load: kg(60) },
      changeToWork: { pieces: 4 },
      stripDown: { pieces: 4 },
    });
  });
});
