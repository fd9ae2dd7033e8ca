import { describe, expect, it } from 'vitest';
import { shownResult } from '../testing/shownResult.ts';
import { viewText } from '../testing/viewText.tsx';
import { tempoSeconds } from './definition.ts';

describe('tempo-seconds', () => {
  it('times a set, with the last pause and without it', () => {
    // Ten reps of 4 + 1 + 2 + 1 = 8 s: 80 s, and 79 s without the last pause at the top.
    const counted = shownResult(tempoSeconds, { tempo: '4121', reps: '10' });
    expect(counted.headline.exact).toBe(80);
    expect(counted.certainty.says).toContain('79 s');
    const left = shownResult(tempoSeconds, { tempo: '4121', reps: '10', lastPause: 'left-out' });
    expect(left.headline.exact).toBe(79);
  });

  it('gives the counts that keep a time goal, none rounded into it', () => {
    // 3 + 2 + 1 = 6 s a rep: 7 reps 42 s, 10 reps 60 s; 6 and 11 are out.
    const fits = shownResult(tempoSeconds, { tempo: '321', goal: '40-60' });
    expect(viewText(fits.details())).toContain('7 to 10 reps 42 s to 60 s');
    const between = shownResult(tempoSeconds, { tempo: '321', goal: '43-47' });
    expect(viewText(between.details())).toContain('7 reps take 42 s, 8 take 48 s');
  });

  it.each([
    ['30X0', 4],
    ['31\u00d71', 6],
    ['4-0-1-0', 5],
    ['321', 6],
    ['3:1:1:0', 5],
    ['5 0 5 0', 10],
  ])('reads %s as people write it, %d s a rep', (tempo, seconds) => {
    expect(shownResult(tempoSeconds, { tempo, reps: '1' }).headline.exact).toBe(seconds);
  });

  it('starts a chin-up with the lift and a squat with the lowering', () => {
    const said = (starts: string) =>
      viewText(shownResult(tempoSeconds, { tempo: '30X0', starts }).view());
    expect(said('lift').indexOf('lift')).toBeLessThan(said('lift').indexOf('lower'));
    expect(said('lower').indexOf('lower')).toBeLessThan(said('lower').indexOf('lift'));
  });

  it('takes pauses that rest the muscle out of the seconds under load', () => {
    // 5 reps of 3 + 2 + 1 s; the 2 s on the floor carry no load: 30 s, 20 s under load.
    const texts = { tempo: '3210', reps: '5', starts: 'lift', relief: 'pause-after-lower' };
    const shown = shownResult(tempoSeconds, texts);
    expect(shown.headline.exact).toBe(30);
    expect(viewText(shown.details())).toContain('Under load 20 s');
  });

  it('counts a fast lift by what it is said to count for', () => {
    const shown = shownResult(tempoSeconds, { tempo: '30X0', reps: '10', fastLift: '0.5' });
    expect(shown.headline.exact).toBe(35);
  });
});
