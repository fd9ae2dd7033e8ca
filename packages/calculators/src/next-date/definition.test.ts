import { describe, expect, it } from 'vitest';
import { runSnippet } from '../testing/runSnippet.ts';
import { shownResult } from '../testing/shownResult.ts';
import { viewText } from '../testing/viewText.tsx';
import { nextDate } from './definition.ts';

type Texts = Readonly<Record<string, string>>;

const plain = { next: '', plannedOn: '', shortNights: '0' };
const shown = (texts: Texts) => shownResult(nextDate, { ...plain, ...texts });
const hours = (texts: Texts) => shown(texts).headline.exact;
const row = (exercise: string, sets = 3, end = '0', lowering = 'lifted', familiar = 'used') =>
  [exercise, sets, end, lowering, familiar].join('_');

describe('three sets of leg extension to failure', () => {
  const legs = { work: row('leg-extension') };

  // by hand: e^(2.9 + 0.79 · ln 3) = e^3.7679 = 43.29 h; Tue 18:30 and 43 h 17 min are Thu 13:47
  it('asks for 43.3 hours, so from Tuesday evening to Thursday afternoon', () => {
    expect(hours(legs)).toBeCloseTo(43.29, 1);
    expect(shown(legs).headline.value).toBe('Thu 5 Mar, 14:00');
  });

  // 09:00 world time on 28 March and 43 h 17 min are 04:17 on the 30th, 06:17 on a clock in Berlin
  it('counts elapsed hours over a clock change', () => {
    const over = { ...legs, on: '2026-03-28', at: '10:00', zone: 'Europe/Berlin' };
    expect(shown(over).headline.value).toBe('Mon 30 Mar, 07:00');
  });

  it('says earliest and cautious apart from likely by the spread of people and times', () => {
    const { certainty } = shown(legs);
    if (certainty.kind !== 'band') throw new Error('no band');
    // 1.2816 standard deviations of √(0.44² + 0.44²) = 0.622 on the log scale are a factor of 2.22
    expect(certainty.band.high / certainty.band.likely).toBeCloseTo(2.22, 1);
    expect(certainty.band.likely / certainty.band.low).toBeCloseTo(2.22, 0);
  });

  it('takes no less time the harder, the more, the newer', () => {
    const by = (...rows: readonly string[]) => hours({ work: rows.join('~') });
    const lift = 'leg-extension';
    expect(by(row(lift, 3, '3'))).toBeLessThan(by(row(lift, 3, '1')));
    expect(by(row(lift, 3, '1'))).toBeLessThan(by(row(lift, 3, '0')));
    expect(by(row(lift, 3, '0'))).toBeLessThan(by(row(lift, 3, 'past1')));
    expect(by(row(lift, 3, '0'))).toBeLessThan(by(row(lift, 3, '0', 'heavy')));
    expect(by(row(lift, 3))).toBeLessThan(by(row(lift, 6)));
    expect(by(row(lift, 3))).toBeLessThan(by(row(lift, 3, '0', 'lifted', 'once')));
    expect(by(row(lift, 3, '0', 'lifted', 'once'))).toBeLessThan(
      by(row(lift, 3, '0', 'lifted', 'first')),
    );
    expect(hours({ ...legs, status: 'trained' })).toBeLessThan(hours(legs));
  });

  it('says how the hours fall as the same session is done again', () => {
    const text = viewText(shown(legs).details());
    const rows = [
      'never done before',
      'a second time, a week later',
      'a third time',
      'a fourth time',
    ];
    const likely = rows.map((name) => Number(new RegExp(`${name} (\\d+) h`).exec(text)?.[1]));
    expect(likely).toEqual(likely.toSorted((a, b) => b - a));
    // new work for the front of the thigh: 43.29 · e^0.74 · 0.8 = 72.6 h
    expect(likely[0]).toBe(73);
  });
});

describe('reports', () => {
  const rowing = { work: row('cable-row') };

  it('lengthen the hours by what is said of them, with the source', () => {
    expect(hours({ ...rowing, shortNights: '2' })).toBeCloseTo(1.2 * hours(rowing), 9);
    const sore = shown({ ...rowing, sore: 'lats_clear' });
    expect(sore.headline.exact).toBeCloseTo(1.25 * hours(rowing), 9);
    expect(viewText(sore.details())).toMatch(/Lats: Still clearly sore.*Ferreira DV/);
  });

  it('never shorten them for a muscle that is not sore', () => {
    expect(hours({ ...rowing, sore: 'vasti_severe' })).toBe(hours(rowing));
    expect(hours({ ...rowing, sore: 'lats_slight' })).toBe(hours(rowing));
  });

  it('ask for help with severe soreness instead of waiting', () => {
    const { cautions } = shown({ ...rowing, sore: 'lats_severe' });
    expect(cautions.map(({ id }) => id)).toContain('dark-urine');
    expect(cautions.every(({ instead }) => instead !== '')).toBe(true);
  });

  it('learn from how earlier sessions went', () => {
    const late = hours({ ...rowing, before: '72_6_9~72_6_9' });
    const soon = hours({ ...rowing, before: '24_9_9~24_9_9' });
    expect(late).toBeGreaterThan(hours(rowing));
    expect(soon).toBeLessThan(hours(rowing));
  });
});

describe('chest on Monday, shoulders on Tuesday', () => {
  const monday = { work: row('barbell-bench-press'), on: '2026-03-02', at: '18:00' };
  const tuesday = { ...monday, plannedOn: '2026-03-03', plannedAt: '18:00' };

  it('is held back by the muscles they share, whatever they are called', () => {
    const text = viewText(shown({ ...tuesday, next: 'seated-dumbbell-press' }).details());
    expect(text).toMatch(/Tue 3 Mar, 18:00 is before the likely time for .*front deltoid/i);
    expect(text).toMatch(/Triceps.*after barbell bench press/);
    expect(text).toMatch(/Trained then, and not this time: .*side deltoid/);
  });

  it('asks no day off for muscles that were not trained', () => {
    const answer = nextDate.answer({ ...plain, ...tuesday, next: 'leg-extension' });
    expect(answer).toMatchObject({ kind: 'none', reason: 'nothing-shared' });
  });

  it('puts biceps into the way of a pull day after rows', () => {
    const text = viewText(shown({ work: row('cable-row'), next: 'dumbbell-curl' }).details());
    expect(text).toMatch(/Biceps after seated cable row \(helps\) before dumbbell curl/);
  });

  it('says so when the plan lies before the session', () => {
    const text = viewText(shown({ ...tuesday, plannedOn: '2026-03-01' }).details());
    expect(text).toMatch(/does not lie after the session/);
  });
});

describe('next-date', () => {
  it('does not answer for sets beyond all measure', () => {
    const rows = Array.from({ length: 12 }, () => row('cable-curl', 20, 'past3', 'heavy', 'first'));
    expect(nextDate.answer({ ...plain, work: rows.join('~') })).toMatchObject({
      kind: 'none',
      reason: 'too-much',
    });
  });

  it('gives code that agrees with every kind of report', async () => {
    const all = shownResult(nextDate, {
      status: 'new',
      sore: 'lats_clear~biceps_severe',
      before: '60_7_9',
      work: `${row('cable-row', 2, 'past2', 'lifted', 'once')}~${row('nordic-curl', 2, '1', 'heavy', 'first')}`,
    });
    expect((await runSnippet(all.snippet)).at(-1)).toEqual([all.headline.exact]);
  });
});
