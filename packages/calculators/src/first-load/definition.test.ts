import { describe, expect, it } from 'vitest';
import { shownResult } from '../testing/shownResult.ts';
import { viewText } from '../testing/viewText.tsx';
import { firstLoad } from './definition.ts';

type Texts = Readonly<Record<string, string>>;

const shown = (texts: Texts) => shownResult(firstLoad, texts);
const details = (texts: Texts) => viewText(shown(texts).details());

/** A pulldown in steps of 5 kg from 5 kg, at 1:1, and sets of ten to twelve. */
const pulldown = { gear: 'stack', pulley: '1', addOn: '', stackFirst: '5kg', stackStep: '5kg' };

/** Kilograms in a row of the table of what follows. */
const after = (texts: Texts, felt: string) =>
  Number(new RegExp(`${felt} (?:try|work with) ([\\d.]+) kg`).exec(details(texts))?.[1]);

describe('first-load', () => {
  it('asks for nothing about the person', () => {
    const asked = Object.values(firstLoad.fields).map(({ label }) => label.toLowerCase());
    for (const label of asked) expect(label).not.toMatch(/body|age|sex|height|one-rep|max/);
  });

  it('starts with the lightest setting and a few reps, whatever is wanted', () => {
    for (const window of ['5', '10-12', '20-25']) {
      const { headline, certainty } = shown({ ...pulldown, window });
      expect(headline.label).toMatch(/^Trial set 1/);
      expect(headline.exact).toBe(5);
      expect(certainty.says).toMatch(/Do [5-8] reps, and stop before that when only 3 are left/);
    }
    const bar = shown({ gear: 'bar', bar: '15kg', lift: 'press' });
    expect(bar.headline.exact).toBe(15);
  });

  it('says beforehand what each way a set may feel leads to', () => {
    const tries = '10kg_8_far-too-easy';
    const texts = { ...pulldown, tries };
    const next = shown(texts).headline.exact;
    expect(after(texts, 'far too easy')).toBeGreaterThan(next);
    // 8 done and some 5 or 6 left are 13 to 14, just above the window: stay.
    expect(details(texts)).toContain('about 5 left work with this one');
    expect(after(texts, 'form broke')).toBeLessThan(next);
  });

  it('goes up in large steps while it is easy, in small ones when it is near, down when form breaks', () => {
    const load = (tries: string) => shown({ ...pulldown, tries }).headline.exact;
    // Far too easy: at most twice the last, so 10 kg after 5 kg.
    expect(load('5kg_8_far-too-easy')).toBe(10);
    expect(load('20kg_8_far-too-easy')).toBeGreaterThan(load('20kg_8_3'));
    expect(load('20kg_8_3')).toBeGreaterThanOrEqual(20);
    expect(load('20kg_8_form-broke')).toBeLessThan(20);
  });

  it('ends after four trial sets at most', () => {
    const answer = shown({
      ...pulldown,
      tries: '5kg_8_far-too-easy~10kg_8_far-too-easy~20kg_8_far-too-easy~40kg_8_far-too-easy',
    });
    expect(answer.headline.label).toMatch(/^To start work with/);
    expect(answer.headline.exact).toBeGreaterThanOrEqual(40);
    // At most a quarter above the heaviest load that was tried.
    expect(answer.headline.exact).toBeLessThanOrEqual(50);
    expect(firstLoad.answer({ ...pulldown, tries: Array(5).fill('5kg_8_3').join('~') }).kind).toBe(
      'unreadable',
    );
  });

  it('fills in the next trial set as it was suggested', () => {
    expect(firstLoad.newRow('tries', pulldown)).toEqual(['5kg', '8', '3']);
    expect(firstLoad.newRow('tries', { ...pulldown, tries: '5kg_8_far-too-easy' })).toEqual([
      '10kg',
      '8',
      '3',
    ]);
    expect(firstLoad.newRow('plates', pulldown)).toBeNull();
  });

  it('carries the trial sets on, once the load is found', () => {
    const tries = '20kg_8_5~30kg_8_2';
    const { headline, next, certainty } = shown({ ...pulldown, tries });
    expect(headline.label).toMatch(/^(Found|To start)/);
    expect(certainty.kind).toBe('band');
    const onward = next.find(({ calculator }) => calculator === 'load-for-window');
    expect(onward?.carry.sets).toBe('20kg_8_3-0-2-0_4_0~30kg_8_3-0-2-0_2_0');
    expect(onward?.carry.pulley).toBe('1');
  });

  it('says when even the lightest is too much', () => {
    const answer = firstLoad.answer({
      gear: 'dumbbells',
      dumbbells: '20kg_2~24kg_2',
      lift: 'arm-isolation',
      tries: '20kg_1_failed',
    });
    expect(answer).toMatchObject({ kind: 'none', reason: 'all-too-heavy' });
  });
});
