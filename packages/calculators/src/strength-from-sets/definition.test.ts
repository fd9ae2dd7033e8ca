import { describe, expect, it } from 'vitest';
import { shownResult } from '../testing/shownResult.ts';
import { viewText } from '../testing/viewText.tsx';
import { strengthFromSets as calculator } from './definition.ts';

type Texts = Readonly<Record<string, string>>;

const shown = (texts: Texts) => shownResult(calculator, { lift: 'any', ...texts });
const details = (texts: Texts) => viewText(shown(texts).details());
const bandOf = (texts: Texts) => {
  const { certainty } = shown(texts);
  if (certainty.kind !== 'band') throw new Error('no band');
  return certainty.band;
};
const widthOf = (texts: Texts) => {
  const { low, likely, high } = bandOf(texts);
  return (high - low) / likely;
};

/** One row: load, reps, how it ended, days ago; tempo and body weight where they matter. */
const set = (load: string, reps: number, ended = 'failure', days = 0, tempo = '', body = '78kg') =>
  [load, reps, tempo, ended, days, body].join('_');

describe('strength-from-sets', () => {
  it('lies among published equations for a set of few reps', () => {
    // 80 kg × 5: the equations span from Kemmler (92.6 % at 5: 86.4 kg) to Mayhew (84.0 %: 95.2 kg).
    const { likely } = bandOf({ sets: set('80kg', 5, 'failure', 0, '2-0-1-0') });
    expect(likely).toBeGreaterThan(86.4);
    expect(likely).toBeLessThan(95.2);
  });

  it('narrows with a second set of another load, and says how each contributed', () => {
    const heavy = set('70kg', 6, 'failure', 1, '2-0-1-0');
    const light = set('55kg', 14, 'failure', 1, '2-0-1-0');
    expect(widthOf({ sets: `${heavy}~${light}` })).toBeLessThan(widthOf({ sets: heavy }));
    expect(widthOf({ sets: `${heavy}~${light}` })).toBeLessThan(widthOf({ sets: light }));
    expect(details({ sets: `${heavy}~${light}` })).toMatch(/70 kg × 6 .*narrows it by \d+ %/);
  });

  it('says aloud when sets do not agree, and stays wide', () => {
    // 60 kg × 8 lets expect far more than eight with 45 kg.
    const one = set('60kg', 8, 'failure', 7, '2-0-1-0');
    const two = `${one}~${set('45kg', 8, 'failure', 2, '2-0-1-0')}`;
    expect(shown({ sets: two }).certainty.says).toMatch(/^One set disagrees/);
    expect(details({ sets: two })).toMatch(/These sets do not agree 45 kg × 8: .*which bar/);
    expect(viewText(shown({ sets: two }).view())).toContain('disagrees');
    expect(details({ sets: one })).not.toMatch(/do not agree/);
  });

  it('gives a floor, and no more, from sets that stopped at their target', () => {
    // Nine reps at least with 60 kg: the published equations give 70 (Kemmler) to 78 kg (Wathen).
    const { headline, certainty } = shown({ sets: set('60kg', 8, 'more') });
    expect(headline.label).toBe('One-rep max, at least');
    expect(headline.exact).toBeGreaterThan(60);
    expect(headline.exact).toBeLessThan(70);
    expect(certainty.says).toMatch(/^No set went to failure/);
  });

  it('gives a ceiling from a single that failed', () => {
    const { headline } = shown({ sets: set('60kg', 0) });
    expect(headline.label).toBe('One-rep max, at most');
    // The load that failed, give or take twice the day's form (a standard deviation of 2.5 %).
    expect(Math.abs(headline.exact / 60 - 1)).toBeLessThan(0.05);
  });

  it('takes reps that were left as strength', () => {
    const left = bandOf({ sets: set('60kg', 8, '3') });
    const failed = bandOf({ sets: set('60kg', 8) });
    expect(left.likely).toBeGreaterThan(failed.likely);
  });

  it('hands the belt back, never a single of ten kilograms on the belt', () => {
    // 76 + 12 = 88 kg × 7. Published equations: Kemmler 88 × 1.134 = 99.8, Mayhew 88 ÷ 0.807 = 109.
    const { headline } = shown({ lifted: 'belt', sets: set('12kg', 7, 'failure', 0, '', '76kg') });
    expect(headline.label).toMatch(/^On the belt/);
    expect(headline.exact).toBeGreaterThan(99.8 - 76);
    expect(headline.exact).toBeLessThan(109 - 76);
    expect(headline.also).toMatch(/^10\d\skg with the body/);
  });

  it('puts the curve to what is moved, never to the help', () => {
    // 78 − 30 = 48 kg × 10: O'Conner 48 × 1.25 = 60, Epley 48 × 1.333 = 64; so 14 to 18 kg of help.
    const texts = { lifted: 'help', sets: set('30kg', 10, 'failure', 0, '', '78kg') };
    const { headline } = shown(texts);
    expect(headline.label).toMatch(/^Help for one rep/);
    expect(headline.exact).toBeGreaterThan(13.5);
    expect(headline.exact).toBeLessThan(18.5);
    const better = shown({ lifted: 'help', sets: set('25kg', 10, 'failure', 0, '', '78kg') });
    expect(better.headline.exact).toBeLessThan(headline.exact);
    const refused = calculator.answer({
      lifted: 'help',
      sets: set('80kg', 10, 'failure', 0, '', '78kg'),
    });
    expect(refused).toMatchObject({ kind: 'none', reason: 'assistance-over-body-weight' });
    expect(refused.kind === 'none' && refused.message).toMatch(/^Set 1: /);
  });

  it('does not take fewer chin-ups at a higher body weight for the same loss of strength', () => {
    // 14 at 81 kg, then 9 at 89 kg: the count fell by 36 %, what was moved rose by 10 %.
    const total = (sets: string) => {
      const { also = '' } = shown({ lifted: 'belt', sets }).headline;
      return Number(/^([\d.]+)/.exec(also)?.[1]);
    };
    const before = total(set('0kg', 14, 'failure', 0, '', '81kg'));
    const now = total(set('0kg', 9, 'failure', 0, '', '89kg'));
    expect(now / before).toBeGreaterThan(0.86);
    expect(now / before).toBeLessThan(1.05);
  });

  it('leaves a set of twenty behind once there is one of six', () => {
    const twenty = set('40kg', 20, 'failure', 3);
    const six = set('52.5kg', 6);
    // Published equations part from 53 to 85 kg on 40 kg × 20, so the band has to be wide.
    expect(widthOf({ sets: twenty })).toBeGreaterThan(0.5);
    const both = bandOf({ sets: `${twenty}~${six}` }).likely;
    const alone = bandOf({ sets: six }).likely;
    expect(Math.abs(both / alone - 1)).toBeLessThan(0.03);
  });

  it('says what one more set would do: more reps, more strength', () => {
    const said = details({
      sets: `${set('60kg', 8, 'failure', 3)}~${set('50kg', 13, 'failure', 3)}`,
    });
    expect(said).toContain('One more set with 60 kg today');
    const maxes = [...said.matchAll(/\d+ reps? (\d+) kg \d+ kg to \d+ kg/g)].map(([, kg]) =>
      Number(kg),
    );
    expect(maxes.length).toBe(3);
    expect(maxes).toEqual([...maxes].sort((a, b) => a - b));
  });

  it('words endurance as reps at 80 %', () => {
    const enduring = `${set('80kg', 3)}~${set('60kg', 20)}`;
    const quick = `${set('80kg', 3)}~${set('60kg', 9)}`;
    const reps = (sets: string) => {
      const text = viewText(shown({ sets }).view());
      return Number(/(\d+) to \d+ reps at 80 % of it/.exec(text)?.[1]);
    };
    expect(reps(enduring)).toBeGreaterThan(reps(quick));
  });

  it('refuses a load of nothing, and carries the sets on', () => {
    expect(calculator.answer({ sets: set('0kg', 8) })).toMatchObject({ reason: 'nothing-moves' });
    const { next } = shown({ sets: `${set('60kg', 8, 'failure', 3)}~${set('50kg', 12, '2', 3)}` });
    expect(next.map(({ calculator: id }) => id)).toEqual([
      'load-for-window',
      'compare-equations',
      'log-review',
    ]);
    expect(next[0]?.carry.sets).toBe('60kg_8__failure_3~50kg_12__2_3');
    expect(next[1]?.carry).toEqual({ load: '60kg', reps: '8' });
  });
});
