import { describe, expect, it } from 'vitest';
import { shownResult } from '../testing/shownResult.ts';
import { viewText } from '../testing/viewText.tsx';
import { barLoading } from './definition.ts';

/** Twenty pieces of each, so that no count limits the answer. */
const many = (...weights: readonly string[]) => weights.map((weight) => `${weight}_20`).join('~');

/** One pair of each. */
const pairs = (...weights: readonly string[]) => weights.map((weight) => `${weight}_2`).join('~');

const sideOf = (texts: Readonly<Record<string, string>>) =>
  /inside out (.*?) \d/.exec(viewText(shownResult(barLoading, texts).view()))?.[1] ?? '';

describe('bar-loading', () => {
  it('adds kilograms and pounds exactly', () => {
    // By hand: 20 + 2 × (20 + 45 × 0.45359237 + 2.5 × 0.45359237) = 103.09127515 kg.
    const { headline } = shownResult(barLoading, {
      target: '103.09127515kg',
      plates: '20kg_2~45lb_2~2.5lb_2',
    });
    expect(headline.exact).toBe(103.09127515);
    expect(headline.value).toBe('≈103.09');
    expect(headline.also).toBe('≈\u00a0227.3\u00a0lb');
  });

  it('rounds to totals that the bar can hold', () => {
    // Smallest plate 2.5 kg: 60 and 65 are the neighbours of 62.
    const plates = many('20kg', '15kg', '10kg', '5kg', '2.5kg');
    expect(shownResult(barLoading, { target: '62kg', plates }).headline.value).toBe('60');
    const above = { target: '62kg', plates, take: 'at-least' };
    expect(shownResult(barLoading, above).headline.value).toBe('65');
  });

  it('takes the bar that is there, never 20 kg by itself', () => {
    // (47.5 − 15) ÷ 2 = 16.25 = 15 + 1.25.
    const plates = many('20kg', '15kg', '10kg', '5kg', '2.5kg', '1.25kg');
    const shown = shownResult(barLoading, { target: '47.5kg', bar: '15kg', plates });
    expect(shown.headline.exact).toBe(47.5);
    expect(viewText(shown.view())).toContain('15 + 1.25 kg');
  });

  it('says when the plates are all on, and counts heavy collars twice', () => {
    // One pair each: 20 + 2 × 38.75 = 97.5 kg; two collars of 2.5 kg make 100 with 37.5 a side.
    const plates = pairs('20kg', '10kg', '5kg', '2.5kg', '1.25kg');
    const short = shownResult(barLoading, { target: '100kg', plates });
    expect(short.headline.exact).toBe(97.5);
    expect(short.certainty.says).toBe(
      '2.5\u00a0kg below what was asked for: everything that pairs up is on.',
    );
    const collared = shownResult(barLoading, { target: '100kg', plates, collar: '2.5kg' });
    expect(collared.headline.exact).toBe(100);
    expect(viewText(collared.view())).toContain('20 + 10 + 5 + 2.5 kg');
  });

  it('loads a bar stamped in pounds', () => {
    // (225 − 60) ÷ 2 = 82.5 = 45 + 35 + 2.5.
    const plates = many('45lb', '35lb', '25lb', '10lb', '5lb', '2.5lb');
    const texts = { target: '225lb', bar: 'other', barWeight: '60lb', plates, show: 'lb' };
    const shown = shownResult(barLoading, texts);
    expect(shown.headline.exact).toBe(225);
    expect(viewText(shown.view())).toContain('45 + 35 + 2.5 lb');
  });

  it('tells the change from what is on the bar, the ends by turns', () => {
    // 60 kg is 20 a side, 70 kg is 20 + 5: nothing comes off, 5 kg goes on at each end.
    const plates = pairs('20kg', '10kg', '5kg');
    const shown = shownResult(barLoading, { target: '70kg', before: '60kg', plates });
    const details = viewText(shown.details());
    expect(details).toContain('From 60 kg to this');
    expect(details).toContain('Put on 5 kg, left Put on 5 kg, right');
    expect(details).not.toContain('Take off');
  });

  it('names what cannot be done', () => {
    const reason = (texts: Readonly<Record<string, string>>) => {
      const answer = barLoading.answer(texts);
      return answer.kind === 'none' ? `${answer.reason}: ${answer.message}` : answer.kind;
    };
    expect(reason({ target: '15kg' })).toMatch(/^lightest-is-heavier: .*20\skg.*dumbbells/);
    expect(reason({ target: '300kg', take: 'at-least' })).toMatch(
      /^heaviest-is-lighter: .*\skg\.$/,
    );
    expect(reason({ target: '20kg', plates: '' })).toBe('result');
  });

  it('draws nothing on an empty bar', () => {
    expect(sideOf({ target: '20kg', plates: '' })).toBe('nothing');
  });
});
