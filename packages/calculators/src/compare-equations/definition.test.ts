import { describe, expect, it } from 'vitest';
import { shownResult } from '../testing/shownResult.ts';
import { viewText } from '../testing/viewText.tsx';
import { compareEquationsCalculator as calculator } from './definition.ts';

type Texts = Readonly<Record<string, string>>;

const shown = (texts: Texts) => shownResult(calculator, texts);
const details = (texts: Texts) => viewText(shown(texts).details());

describe('compare-equations', () => {
  it('measures from the least to the largest of those made for the set', () => {
    // 60 kg × 8 by hand. Kemmler: 60 × (0.988 + 0.0832 + 0.1216 − 0.0299008) = 69.774.
    // Wathen: 6000 ÷ (48.8 + 53.8 × e^−0.6) = 6000 ÷ 78.32607 = 76.603. All others lie between.
    const { headline, certainty } = shown({ load: '60kg', reps: '8' });
    expect(headline.exact).toBeCloseTo(76.603 - 69.774, 2);
    expect(headline.value).toBe('6.8');
    expect(headline.also).toBe('70 to 77 kg');
    // 76.603 ÷ 69.774 = 1.0979.
    expect(certainty.says).toMatch(/^11 equations, 10\s% apart\. Windlass believes \d+ to \d+ kg/);
  });

  it('writes the equations out with these numbers', () => {
    const { why } = shown({ load: '60kg', reps: '8' });
    expect(why.steps[0]).toBe(
      'Kemmler et al. 2006: 60 × (0.988 + 0.0104 × 8 + 0.00190 × 8^2 − 0.0000584 × 8^3) = 69.8 kg',
    );
    expect(why.steps[1]).toMatch(/^Wathen 1994: 100 × 60 ÷ \(48\.8 .*= 76\.6 kg$/);
  });

  it('gives the same distance in pounds', () => {
    const kg = shown({ load: '60kg', reps: '8' }).headline.exact;
    const lb = shown({ load: '60kg', reps: '8', show: 'lb' }).headline.exact;
    expect(lb * 0.45359237).toBeCloseTo(kg, 9);
  });

  it('takes one rep as itself, where an equation would add 3 %', () => {
    const { headline, certainty, next } = shown({ load: '100kg', reps: '1' });
    expect(headline.exact).toBe(100);
    expect(headline.label).toMatch(/one-rep max$/);
    expect(certainty.says).toMatch(/Done, not predicted/);
    expect(next.length).toBeGreaterThan(0);
  });

  it('warns above ten reps, and then speaks of all equations', () => {
    const at = (reps: string) => shown({ load: '40kg', reps });
    expect(at('10').cautions).toEqual([]);
    expect(at('11').cautions.map(({ id }) => id)).toEqual(['above-ten-reps']);
    // 40 kg × 20. Lombardi: 40 × 20^0.1 = 53.971. Brzycki: 40 ÷ (1.0278 − 0.556) = 84.782.
    expect(at('20').headline.exact).toBeCloseTo(84.782 - 53.971, 2);
    expect(at('20').certainty.says).toMatch(/57\s% apart, next to none made for so many reps/);
  });

  it('says which equation is asked outside its range, and which breaks down', () => {
    expect(details({ load: '60kg', reps: '12' })).toMatch(
      /Epley 1985 For 2 to 10 reps\..*outside its range/,
    );
    const long = details({ load: '20kg', reps: '40' });
    expect(long).toMatch(/Brzycki 1993 [^%]*none breaks down here/);
  });

  it('adds the equations of a lift only for that lift', () => {
    const five = { load: '80kg', reps: '5' };
    expect(details(five)).not.toMatch(/Reynolds/);
    // 1.1307 × 80 + 0.6999 = 91.156.
    expect(details({ ...five, lift: 'bench-press' })).toMatch(
      /5RM bench press.*91\.2 kg made for it/,
    );
  });

  it('widens the own band when the tempo is not known', () => {
    const width = (tempo: string) => {
      const says = shown({ load: '60kg', reps: '8', tempo }).certainty.says;
      const [, low, high] = /believes (\d+) to (\d+)/.exec(says) ?? [];
      return Number(high) - Number(low);
    };
    expect(width('')).toBeGreaterThanOrEqual(width('2-0-1-0'));
  });
});
