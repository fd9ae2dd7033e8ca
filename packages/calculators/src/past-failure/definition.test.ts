import { describe, expect, it } from 'vitest';
import type { NoAnswer } from '../contract/Answer.ts';
import { readField } from '../fields/readField.ts';
import { renderCalculator } from '../renderCalculator.tsx';
import { runSnippet } from '../testing/runSnippet.ts';
import { shownResult } from '../testing/shownResult.ts';
import { viewText } from '../testing/viewText.tsx';
import { pastFailure } from './definition.ts';

type Texts = Readonly<Record<string, string>>;

function refused(texts: Texts): NoAnswer {
  const answer = pastFailure.answer(texts);
  if (answer.kind !== 'none') throw new Error(`not refused: ${answer.kind}`);
  return answer;
}
const picture = ({ view }: NoAnswer) => viewText(view?.());
const everything = ({ view, details }: NoAnswer) => viewText([view?.(), details?.()]);

describe('lift, hold, lower on the pulldown, alone', () => {
  const pulldown = { exercise: 'cable-pulldown', lowerings: '1', lowerSeconds: '6' };

  it('is offered with one lowering, and says that nobody has counted what follows failure', () => {
    const shown = shownResult(pastFailure, pulldown);
    expect(shown.certainty.says).toMatch(/no study counts holds or lowerings/);
    expect(shown.why.restsOn).toMatch(/^No study counts holds or lowerings/);
    const text = viewText(shown.view());
    expect(text.indexOf('Lift')).toBeLessThan(text.indexOf('Hold'));
    expect(text.indexOf('Hold')).toBeLessThan(text.indexOf('Lower'));
  });

  it('does not lower before holding, and offers the other order with all else kept', () => {
    const texts = { ...pulldown, stage1: 'lower', stage2: 'hold-contracted', holdSeconds: '12' };
    const answer = refused({ ...texts, share: '72', heaviness: 'share' });
    expect(answer.reason).toBe('extension.wrong-order');
    expect(picture(answer)).toMatch(/lower more than it can hold/);
    const carry = answer.next?.[0]?.carry ?? {};
    for (const [name, text] of Object.entries(carry)) {
      const field = pastFailure.fields[name];
      expect(field && readField(field, text)).toMatchObject({ ok: true });
    }
    const taken = shownResult(pastFailure, carry);
    const before = shownResult(pastFailure, {
      ...texts,
      share: '72',
      heaviness: 'share',
      stage1: 'hold-contracted',
      stage2: 'lower',
    });
    expect(taken.headline.exact).toBe(before.headline.exact);
  });

  it('does not lower again where only the tired muscles could bring the load up', () => {
    const answer = refused({ ...pulldown, lowerings: '4' });
    expect(answer.reason).toBe('extension.no-way-back');
    expect(answer.next?.[0]?.label).toMatch(/lower once/);
    expect(shownResult(pastFailure, answer.next?.[0]?.carry ?? {}).headline.exact).toBeGreaterThan(
      0,
    );
  });

  it('does not lift on after the last lowering', () => {
    expect(refused({ stage2: 'lower', stage3: 'lighter' }).reason).toBe('extension.wrong-order');
  });
});

describe('a bar above the body, alone', () => {
  const bench = { exercise: 'barbell-bench-press', stage1: 'assisted', stage2: 'lower' };

  it('refuses help and lowerings, says why, names what can be left, and ends short of failure', () => {
    const answer = refused(bench);
    const text = everything(answer);
    expect(text).toMatch(/stays on the lifter unless stops catch it/);
    expect(text).toMatch(/dumbbells, a machine, a guided bar with stops or body weight/);
    expect(text).toMatch(/test them with the empty bar/);
    expect(text).toMatch(/2 or more repetitions left/);
    expect(answer.next?.map(({ calculator }) => calculator)).toEqual(['exchange']);
    expect(answer.next?.[0]?.carry).toMatchObject({ exercise: 'barbell-bench-press' });
    expect(text).not.toMatch(/tip|roll/i);
  });

  it('is offered between stops that were tried, without help', () => {
    const texts = { ...bench, stops: 'yes', stage1: 'lighter', stage2: 'none' };
    expect(shownResult(pastFailure, texts).headline.exact).toBeGreaterThan(0);
  });

  it('is offered with a partner, whose help is said as measured', () => {
    const shown = shownResult(pastFailure, {
      ...bench,
      company: 'partner',
      helpReps: '2',
      stage2: 'none',
    });
    // Medians of the peak help on the two repetitions after failure: 19 and 33 %.
    expect(viewText(shown.details())).toContain('up to 19 %, then 33 %');
  });
});

describe('who is asked first', () => {
  it('treated blood pressure: no chain, no hold, the physician decides', () => {
    const answer = refused({ pressure: 'treated', clinician: 'agrees', before: 'accustomed' });
    expect(answer.cautions?.map(({ id }) => id)).toContain('blood-pressure-treated');
    expect(answer.next).toEqual([]);
    expect(picture(answer)).toMatch(/repetitions left/);
  });

  it('a physician who has allowed it comes before the page', () => {
    const texts = { pressure: 'treated', clinician: 'past-failure' };
    expect(shownResult(pastFailure, texts).headline.exact).toBeGreaterThan(0);
  });

  it('twelve years old: nothing to failure, whoever switches it on, and no number', () => {
    const answer = refused({ age: '12', switchedOn: 'yes', clinician: 'past-failure' });
    expect(picture(answer)).toMatch(/under 18/);
    expect(answer.cautions?.find(({ id }) => id === 'under-18')?.ask).toContain('qualified-adult');
    expect(answer.next).toEqual([]);
  });

  it('over 65: off until a coach switches it on', () => {
    expect(refused({ age: '70' }).reason).toBe('extension.no-chain');
    const shown = shownResult(pastFailure, { age: '70', switchedOn: 'yes' });
    expect(shown.cautions.map(({ id }) => id)).toContain('over-65');
  });

  it('a sign of disease: nobody trains before a physician was asked', () => {
    const answer = refused({ sign: 'chest-discomfort' });
    expect(answer.reason).toBe('extension.no-training-yet');
    expect(answer.cautions?.[0]).toMatchObject({ level: 'stop' });
  });

  it('first hard lowerings: six at most', () => {
    expect(refused({ lowerings: '8' }).next?.[0]?.label).toMatch(/lower 6 times at most/);
    const accustomed = shownResult(pastFailure, { lowerings: '8', before: 'accustomed' });
    expect(accustomed.headline.exact).toBeGreaterThan(0);
  });
});

describe('how it is counted', () => {
  it('takes a share as it takes load and one-rep max', () => {
    // 84 of 105 kg is 80 %.
    const byMax = shownResult(pastFailure, { load: '84kg', max: '105kg' });
    const byShare = shownResult(pastFailure, { load: '84kg', heaviness: 'share', share: '80' });
    expect(byShare.headline.exact).toBe(byMax.headline.exact);
  });

  it('costs more recovery with every stage: 1 for failure, 0.25 and 0.5 on top', () => {
    expect(shownResult(pastFailure, {}).headline.also).toBe('costs 1.75 sets');
    expect(shownResult(pastFailure, { stage2: 'none' }).headline.also).toBe('costs 1.25 sets');
  });

  it('names loads and paces that nothing was measured for', () => {
    expect(refused({ load: '10kg', max: '100kg' }).reason).toBe('too-light');
    expect(refused({ load: '120kg', max: '100kg' }).reason).toBe('too-heavy');
    expect(refused({ tempo: '30-0-31-0' }).reason).toBe('pace');
  });

  it('shows every sign to stop for, and signs for the days after', () => {
    const text = viewText(shownResult(pastFailure, {}).details());
    for (const sign of ['in the chest', 'severe headache', 'breath that is held', 'cola-coloured'])
      expect(text).toContain(sign);
  });

  it('leaves following the set live out of the served page', () => {
    expect(renderCalculator(pastFailure)).toMatch(
      /<div class="wl-live-place wl-no-print" data-wakes[^>]*><\/div>/,
    );
  });

  it('gives code that agrees for every kind of stage', async () => {
    const stages = ['lighter', 'pause', 'part-range', 'hold-middle', 'lower'];
    const texts = Object.fromEntries(stages.map((id, place) => [`stage${place + 1}`, id]));
    const shown = shownResult(pastFailure, texts);
    expect((await runSnippet(shown.snippet)).at(-1)).toEqual([shown.headline.exact]);
  });
});
