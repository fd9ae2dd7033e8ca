import { describe, expect, it } from 'vitest';
import { shownResult } from '../testing/shownResult.ts';
import { viewText } from '../testing/viewText.tsx';
import { gymLoads } from './definition.ts';

type Texts = Readonly<Record<string, string>>;

const shown = (texts: Texts) => shownResult(gymLoads, texts);
const head = (texts: Texts) => {
  const { headline, certainty } = shown(texts);
  return `${headline.label}: ${headline.value} ${headline.unit}. ${certainty.says}`.replace(
    /\u00a0/g,
    ' ',
  );
};
const details = (texts: Texts) => viewText(shown(texts).details());
const pairs = (...weights: readonly string[]) => weights.map((one) => `${one}_2`).join('~');

describe('gym-loads, dumbbells', () => {
  it('passes over a pair with a piece missing, and says how large the gap is', () => {
    // (28 − 24) ÷ 24 = 16.67 %; 26 lies half way, which counts as the lighter one.
    const texts = { target: '26kg', dumbbells: `${pairs('22kg', '24kg')}~26kg_1~28kg_2` };
    expect(head(texts)).toBe(
      'Nearest to 26 kg, each hand: 24 kg. 2 kg below what was asked for. Next up: 28 kg, 16.7 % more, which is bridged first.',
    );
    expect(head({ ...texts, hands: '1' })).toMatch(/^Nearest to 26 kg, one hand: 26 kg\. Exactly/);
  });

  it('counts all loads, names the largest step and says them as runs', () => {
    // 4 → 6 is half as much again; 4 6 8 and 24 → 28 (16.7 %) and 8 → 20 (150 %).
    const texts = { target: '', dumbbells: pairs('4kg', '6kg', '8kg', '20kg', '22kg', '24kg') };
    expect(head(texts)).toBe(
      'All in all this makes: 6 loads. Largest step: 8 kg to 20 kg, 150 % more. 3 of 5 steps are over 10 %.',
    );
    expect(viewText(shown(texts).view())).toContain('4 to 8 by 2, 20 to 24 by 2 kg');
  });

  it('does not foretell a doubled load by repetitions', () => {
    const texts = { target: '3kg', dumbbells: pairs('3kg', '6kg') };
    expect(head(texts)).toMatch(/6 kg, 100 % more, which is bridged first/);
    const said = details(texts);
    expect(said).not.toMatch(/foretell \d/);
    expect(said).toMatch(/outside what any rep curve can foretell/);
    expect(said).toMatch(/longer to lower it.*stop for a second.*one side at a time.*2:1 pulley/);
  });

  it('takes a step of less than 10 % as it is', () => {
    // 2 ÷ 34 = 5.88 %.
    const texts = { target: '34kg', dumbbells: pairs('34kg', '36kg') };
    expect(head(texts)).toMatch(/Next up: 36 kg, 5\.9 % more\.$/);
    expect(details(texts)).not.toMatch(/Bridge it/);
  });
});

describe('gym-loads, bar and handles', () => {
  const noSmall = { gear: 'bar', plates: '20kg_4~10kg_4~5kg_4~2.5kg_4' };

  it('rounds to totals that the bar can hold', () => {
    // The smallest pair adds 5 kg: 65 and 70 are the neighbours of 67.
    expect(head({ ...noSmall, target: '67kg' })).toMatch(/: 65 kg\. 2 kg below/);
  });

  it('offers reps before a large step, as many as published equations give', () => {
    // 35 → 40 is 14.3 %. 40 × 5 by Epley is 46.7 kg, which 35 kg meets at 10 reps; by Brzycki it
    // is 45 kg, which 35 kg meets at 9.
    const texts = { ...noSmall, target: '35kg', goal: '5' };
    expect(head(texts)).toMatch(/Next up: 40 kg, 14\.3 % more, which is bridged first/);
    const [, low, high] =
      /(\d+) to (\d+) reps with 35 kg foretell 5 with 40 kg/.exec(details(texts)) ?? [];
    expect(Number(low)).toBeLessThanOrEqual(9);
    expect(Number(high)).toBeGreaterThanOrEqual(10);
    expect(Number(low)).toBeGreaterThan(5);
  });

  it('says what is the most, and keeps to the pieces there are', () => {
    // One pair each of 15, 10, 5 and 2.5: a side carries 32.5 at most, so 20 + 65 = 85, by 5.
    const texts = { gear: 'bar', plates: pairs('15kg', '10kg', '5kg', '2.5kg'), target: '90kg' };
    expect(head(texts)).toMatch(/: 85 kg\. 5 kg below what was asked for\. Nothing heavier here\./);
    expect(details(texts)).toContain('20 to 85 by 5 kg');
  });

  it('counts collars on both sides', () => {
    const texts = { gear: 'bar', plates: pairs('10kg'), collar: '2.5kg', target: '' };
    expect(details(texts)).toContain('All loads 25, 45 kg');
  });

  it('needs four of a kind for two handles, and two for one', () => {
    // 2 kg handle; four of 2.5 kg make 7 kg in each hand; two of 1.25 kg fit one handle only.
    const texts = { gear: 'handles', smallPlates: '2.5kg_4~1.25kg_2', target: '' };
    expect(details({ ...texts, hands: '2' })).toContain('All loads 2, 7 kg');
    expect(details({ ...texts, hands: '1' })).toMatch(/All loads 2 to .* kg/);
    expect(shown({ ...texts, hands: '1' }).headline.exact).toBe(6);
  });
});

describe('gym-loads, number and load moved', () => {
  it('halves stack and add-on alike on a 2:1 pulley', () => {
    // 35 kg + 2.5 lb = 36.13398 kg, half of it 18.06699; a plate is 2.5 kg at the handle.
    const stack = { gear: 'stack', addOn: '2.5lb', target: '36.134kg' };
    const { headline } = shown(stack);
    expect(headline.exact).toBeCloseTo(18.06699, 5);
    expect(headline.label).toMatch(/^With ≈\s36\.13\skg on the stack/);
    expect(details(stack)).toMatch(/0\.57 kg/);
    expect(details(stack)).toMatch(/Friction is not included/);
    const back = shown({ gear: 'stack', addOn: '', target: '20kg', wantedAs: 'moved' });
    expect(back.headline.exact).toBe(40);
  });

  it('takes the part of sled and plates that acts along the rail', () => {
    // (41 + 100) × sin 45° = 99.702; × sin 30° = 70.5.
    const press = { gear: 'machine', startLoad: '41kg', plates: '20kg_4~10kg_2', target: '100kg' };
    expect(shown(press).headline.exact).toBeCloseTo(99.702, 3);
    expect(shown({ ...press, rail: '30' }).headline.exact).toBeCloseTo(70.5, 9);
  });

  it('leaves an unknown start unknown', () => {
    const guided = { gear: 'machine', start: 'unknown', plates: '20kg_2', target: '40kg' };
    const { headline, certainty } = shown(guided);
    expect(headline.exact).toBe(40);
    expect(certainty.says).toMatch(/nobody knows what it weighs empty/);
    expect(details(guided)).toMatch(/compare only on this machine/);
    expect(details(guided)).not.toMatch(/foretell \d/);
  });

  it('takes help off the body, so that less help is more load', () => {
    // 75 − 30 = 45, three fifths of 75; the next load up is 25 kg of help.
    const station = { gear: 'body', bodyWeight: '75kg', added: 'help', target: '30kg' };
    const { headline, certainty, why } = shown(station);
    expect(headline.exact).toBe(45);
    expect(headline.also).toMatch(/−30\skg added/);
    expect(certainty.says).toMatch(/Next up: 25\skg of help, 11\.1\s% more/);
    expect(why.steps[0]).toMatch(/1 × 75\skg − 30\skg = 45\skg/);
    const back = shown({ ...station, target: '45kg', wantedAs: 'moved' });
    expect(back.headline.exact).toBe(-30);
  });

  it('refuses help that leaves nothing to lift', () => {
    const answer = gymLoads.answer({
      gear: 'body',
      bodyWeight: '80kg',
      added: 'help',
      target: '85kg',
    });
    expect(answer).toMatchObject({ kind: 'none', reason: 'assistance-over-body-weight' });
  });

  it('gives a push-up as a range, never the whole body', () => {
    // 67.1 and 73.3 % of 80 kg: 53.68 and 58.64 kg.
    const { headline, certainty } = shown({
      gear: 'body',
      bodyWeight: '80kg',
      moves: 'push-up',
      added: 'nothing',
      target: '0kg',
    });
    expect(headline.exact).toBeCloseTo((53.68 + 58.64) / 2, 6);
    expect(certainty.says).toMatch(/53\.68\skg to 58\.64\skg/);
  });

  it('counts body and belt together, so that a disc is a small step', () => {
    // 84 + 10 = 94; 1.25 kg on top is 1.33 % of it, not an eighth.
    const texts = {
      gear: 'body',
      bodyWeight: '84kg',
      beltBase: '0kg',
      plates: '10kg_1~1.25kg_1',
      target: '10kg',
    };
    expect(shown(texts).headline.exact).toBe(94);
    expect(head(texts)).toMatch(/11\.25 kg, 1\.3 % more/);
  });

  it('says that a band is not known', () => {
    expect(gymLoads.answer({ gear: 'band' })).toMatchObject({
      kind: 'none',
      reason: 'resistance-unknown',
    });
  });
});
