import { describe, expect, it } from 'vitest';
import { shownResult } from '../testing/shownResult.ts';
import { viewText } from '../testing/viewText.tsx';
import { warmUpRamp } from './definition.ts';

type Typed = Readonly<Record<string, string>>;

const many = (...weights: readonly string[]) => weights.map((weight) => `${weight}_8`).join('~');
const plates = many('20kg', '15kg', '10kg', '5kg', '2.5kg', '1.25kg');

/** Load and reps of every step, as the stairs say them. */
function stepsOf(texts: Typed): readonly (readonly [load: number, reps: number])[] {
  const details = viewText(shownResult(warmUpRamp, { plates, ...texts }).details());
  return [...details.matchAll(/([\d.]+) kg × (\d+)/g)].map(([, load, reps]) => [
    Number(load),
    Number(reps),
  ]);
}

const reasonOf = (texts: Typed) => {
  const answer = warmUpRamp.answer({ plates, ...texts });
  return answer.kind === 'none' ? answer.reason : answer.kind;
};

describe('warm-up-ramp', () => {
  it('ramps from the empty bar in shrinking jumps and few reps', () => {
    // A coach's worked example for 60 kg × 5 is 20 × 8, 40 × 5, 50 × 3, 55 × 1; 3 to 5 steps, the
    // last at 80 to 93 % of the work load, about 20 reps at most.
    const steps = stepsOf({ work: '60kg', possible: '6' });
    const loads = [...steps.map(([load]) => load), 60];
    const jumps = loads.slice(1).map((load, at) => load - (loads[at] ?? 0));
    expect(steps.length).toBeGreaterThanOrEqual(3);
    expect(steps.length).toBeLessThanOrEqual(5);
    expect(steps[0]?.[0]).toBe(20);
    expect(jumps).toEqual([...jumps].sort((a, b) => b - a));
    expect((steps.at(-1)?.[0] ?? 0) / 60).toBeGreaterThanOrEqual(0.8);
    expect((steps.at(-1)?.[0] ?? 0) / 60).toBeLessThanOrEqual(0.93);
    expect(steps.reduce((sum, [, reps]) => sum + reps, 0)).toBeLessThanOrEqual(20);
  });

  it('never goes below the bar, twice to one load, or up to the work load', () => {
    // 40, 60 and 80 % of 30 kg would be 12, 18 and 24 kg; the bar alone is 20.
    const loads = stepsOf({ work: '30kg', possible: '8' }).map(([load]) => load);
    expect(loads.length).toBeGreaterThan(0);
    expect(Math.min(...loads)).toBeGreaterThanOrEqual(20);
    expect(Math.max(...loads)).toBeLessThan(30);
    expect(loads).toEqual([...new Set(loads)].sort((a, b) => a - b));
  });

  it('has nothing to ramp when the work load is the empty bar', () => {
    expect(reasonOf({ work: '20kg' })).toBe('work-is-the-lightest-load');
  });

  it('starts a pull from the floor with a full-size plate', () => {
    const steps = stepsOf({
      work: '240kg',
      possible: '4',
      starts: 'floor',
      plates: many('25kg', '20kg', '10kg', '5kg', '2.5kg'),
    });
    expect(steps[0]?.[0]).toBeGreaterThanOrEqual(60);
    expect(steps.length).toBeGreaterThanOrEqual(5);
    expect(steps.length).toBeLessThanOrEqual(8);
  });

  it('shortens when the muscles have worked, except for a technical lift', () => {
    const count = (texts: Typed) => stepsOf({ work: '60kg', possible: '6', ...texts }).length;
    expect(count({ warm: 'worked' })).toBeLessThan(count({}));
    expect(count({ warm: 'worked', technical: 'yes' })).toBe(count({}));
  });

  it('ramps on a stack by the number at the pin', () => {
    const shown = shownResult(warmUpRamp, { gear: 'stack', work: '60kg', possible: '8' });
    expect(shown.headline.label).toBe('To 60\u00a0kg, in');
    expect(viewText(shown.details())).toMatch(/pin to \d+ kg/);
  });

  it('says when another load than the one asked for is ramped to', () => {
    const shown = shownResult(warmUpRamp, { plates: many('10kg'), work: '62kg', possible: '6' });
    expect(shown.headline.label).toBe('To 60\u00a0kg, the nearest that can be made, in');
  });

  it('leaves the rep above the work load out without stops, and says why', () => {
    const details = viewText(shownResult(warmUpRamp, { above: 'no-stops' }).details());
    expect(details).toContain('The rep above the work load is left out');
  });
});
