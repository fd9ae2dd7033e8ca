import { describe, expect, it } from 'vitest';
import type { NoAnswer } from '../contract/Answer.ts';
import { runSnippet } from '../testing/runSnippet.ts';
import { shownResult } from '../testing/shownResult.ts';
import { viewText } from '../testing/viewText.tsx';
import { pair } from './definition.ts';

type Texts = Readonly<Record<string, string>>;

function refused(texts: Texts): NoAnswer {
  const answer = pair.answer(texts);
  if (answer.kind !== 'none') throw new Error(`not refused: ${answer.kind}`);
  return answer;
}

const bench = {
  target: 'chest',
  limit: 'triceps',
  isolation: 'machine-fly',
  isolationReps: '10',
  isolationTempo: '3-0-1-0',
  compound: 'barbell-bench-press',
  usualLoad: '80kg',
  usualReps: '8',
  compoundTempo: '3-0-1-0',
  between: '40',
};

describe('flies before the bench press', () => {
  const shown = shownResult(pair, bench);

  it('takes 10 to 30 % off the bar, as coaches judge it', () => {
    expect(shown.headline.exact).toBeGreaterThanOrEqual(56);
    expect(shown.headline.exact).toBeLessThanOrEqual(72);
    if (shown.certainty.kind === 'band') expect(shown.certainty.band.high).toBeLessThan(80);
  });

  it('flags forty seconds, and offers pairs at one spot that it can take over', () => {
    expect(shown.cautions[0]?.what).toMatch(/^Transition too long: 40 s/);
    const ways = shown.next.filter(({ calculator }) => calculator === 'pair');
    expect(ways.map(({ label }) => label)).toContain(
      'At one spot: dumbbell fly, then dumbbell bench press',
    );
    for (const { carry } of ways) {
      const ids = shownResult(pair, carry).cautions.map(({ id }) => id);
      expect(ids).not.toContain('pair-transition-too-long');
    }
  });

  it('claims nothing, and says how to correct the first try', () => {
    const said = shown.cautions.map(({ what, why }) => `${what} ${why}`).join(' ');
    expect(said).toMatch(/no proven size or strength/);
    expect(said).toMatch(/triceps worked harder/);
    expect(viewText(shown.details())).toMatch(
      /Change the load by [\d.]+ % for each rep more or fewer/,
    );
  });

  it('never puts triceps first for the chest', () => {
    const answer = refused({ ...bench, isolation: 'cable-pushdown' });
    expect(answer.reason).toBe('pairing.isolation-misses-target');
    expect(viewText(answer.details?.())).toMatch(/gives out first/);
    expect(answer.next?.length).toBeGreaterThan(0);
  });

  it('refuses where earlier presses have spent the triceps', () => {
    const earlier = {
      earlier: 'yes',
      earlierExercise: 'cable-pushdown',
      earlierSets: '5',
      earlierReps: '15',
      earlierMinutes: '0',
    };
    const answer = refused({ ...bench, ...earlier });
    expect(answer.reason).toBe('pairing.helper-spent');
    expect(viewText(answer.view?.())).toMatch(/\d+ % left/);
    const rested = { ...bench, ...earlier, earlierSets: '1', earlierMinutes: '30' };
    expect(shownResult(pair, rested).headline.exact).toBeGreaterThan(0);
  });
});

describe('the pair of the boathouse', () => {
  it('tires the lats and leaves the upper arm alone', () => {
    const text = viewText(shownResult(pair, {}).view());
    const left = (muscle: string) =>
      Number(new RegExp(`${muscle} {1,2}\\d+ % of the lift (\\d+) %`).exec(text)?.[1]);
    expect(left('Lats')).toBeLessThan(100);
    expect(left('Biceps')).toBe(100);
  });

  it('is worse the shorter the way, the more reps before it, and from round to round', () => {
    const load = (texts: Texts) => shownResult(pair, texts).headline.exact;
    expect(load({ between: '0' })).toBeLessThan(load({ between: '120' }));
    expect(load({ repsLeft: '0', isolationReps: '15' })).toBeLessThan(load({ isolationReps: '8' }));
    const rows = viewText(shownResult(pair, { rounds: '3', rest: '60' }).details());
    const loads = [...rows.matchAll(/([\d.]+) kg /g)].map(([, figure]) => Number(figure));
    expect(loads).toHaveLength(3);
    expect(loads).toEqual(loads.toSorted((a, b) => b - a));
    expect(new Set(loads).size).toBe(3);
  });

  it('gives the isolation set fewer reps when the rest is short, never more', () => {
    const reps = (rest: string) => {
      const text = viewText(shownResult(pair, { rounds: '3', rest }).details());
      return [...text.matchAll(/\b[123] (\d+) [\d.]+ kg/g)].map(([, count]) => Number(count));
    };
    const [short, long] = [reps('60'), reps('600')];
    expect(short[0]).toBe(10);
    expect(short[1]).toBeLessThan(10);
    expect(long).toHaveLength(3);
    for (const [round, count] of long.entries()) {
      expect(count).toBeLessThanOrEqual(10);
      expect(count).toBeGreaterThanOrEqual(short[round] ?? 0);
    }
  });

  it('answers with repetitions where the load stays', () => {
    const shown = shownResult(pair, { ask: 'reps' });
    expect(shown.headline.unit).toBe('reps');
    expect(shown.headline.exact).toBeLessThan(9);
    expect(Number.isInteger(shown.headline.exact)).toBe(true);
  });

  it('gives the same in pounds, and code that agrees', async () => {
    const kg = shownResult(pair, {});
    const lb = shownResult(pair, { show: 'lb' });
    expect(lb.headline.exact * 0.45359237).toBeCloseTo(kg.headline.exact, 9);
    const earlier = shownResult(pair, {
      show: 'lb',
      earlier: 'yes',
      earlierExercise: 'cable-curl',
    });
    for (const { snippet, headline } of [lb, earlier]) {
      expect((await runSnippet(snippet)).at(-1)).toEqual([headline.exact]);
    }
  });
});
