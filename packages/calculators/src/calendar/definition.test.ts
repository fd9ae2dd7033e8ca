import { describe, expect, it } from 'vitest';
import { runSnippet } from '../testing/runSnippet.ts';
import { shownResult } from '../testing/shownResult.ts';
import { viewText } from '../testing/viewText.tsx';
import { calendar } from './definition.ts';
import { planIdOf } from './planIdOf.ts';

type Texts = Readonly<Record<string, string>>;

/** The plan as the shown code prints it: wall time, name, light. */
async function planOf(texts: Texts) {
  const printed = await runSnippet(shownResult(calendar, texts).snippet);
  return printed.slice(0, -1) as unknown as readonly (readonly [string, string, boolean])[];
}

/** Hours between wall times on one side of every clock change. */
const hoursBetween = (from: string, to: string) =>
  (Date.parse(`${to}Z`) - Date.parse(`${from}Z`)) / 36e5;
const evenings = [0, 1, 2, 3, 4, 5, 6].map((day) => `${day}_18:30_20:00`).join('~');
const details = (texts: Texts) => viewText(shownResult(calendar, texts).details());
const refused = (texts: Texts) => {
  const answer = calendar.answer(texts);
  if (answer.kind !== 'none') throw new Error(`not refused: ${answer.kind}`);
  return answer;
};

describe('the crew of the boathouse', () => {
  it('trains in its hours alone, light in the fourth week, legs in the own gym only', async () => {
    const plan = await planOf({});
    expect(plan.length).toBeGreaterThanOrEqual(10);
    for (const [start, name, light] of plan) {
      const isAway = start >= '2026-03-17' && start < '2026-03-20';
      const weekday = (new Date(`${start}Z`).getUTCDay() + 6) % 7;
      expect(isAway || [0, 1, 3, 5].includes(weekday)).toBe(true);
      if (isAway) expect(name).not.toBe('Legs');
      expect(light).toBe(start >= '2026-03-23' && start < '2026-03-30');
    }
    // the order of the list, round by round
    expect(plan.map(([, name]) => name)).toEqual(
      plan.map((_, place) => ['Pull', 'Legs', 'Whole body'][place % 3]),
    );
  });

  it('is shown with every date of the four weeks, and says what had to give', () => {
    const shown = shownResult(calendar, {});
    const text = viewText(shown.view());
    expect(text.match(/\b(\d+|1 Mar)\b(?= |$)/g)?.length).toBeGreaterThanOrEqual(28);
    expect(shown.headline.also).toBe('of 12 asked for');
    expect(details({})).toMatch(/What had to give From Mon .*: 2 of 3/);
    expect(details({})).toMatch(/The smallest change that would allow more/);
  });

  it('plans four weeks of three sessions in under 50 ms', () => {
    const times = Array.from({ length: 7 }, () => {
      const before = performance.now();
      expect(calendar.answer({}).kind).toBe('result');
      return performance.now() - before;
    });
    // the limit is that of a form that answers while it is typed in
    expect(times.sort((a, b) => a - b)[3]).toBeLessThan(50);
  });
});

describe('two sessions a week', () => {
  const two = {
    sessions: 'whole_3_0_60_any',
    perWeek: '2',
    week: evenings,
    away: '',
    lightEvery: '',
    weeks: '3',
  };

  it('lie 72 and 96 hours apart, evenly spread', async () => {
    const plan = await planOf(two);
    const gaps = plan.slice(1).map(([start], place) => hoursBetween(plan[place]?.[0] ?? '', start));
    expect(new Set(gaps)).toEqual(new Set([72, 96]));
  });

  it('keep their time of day over a clock change', async () => {
    const plan = await planOf({ ...two, firstDay: '2026-03-23' });
    expect(new Set(plan.map(([start]) => start.slice(11)))).toEqual(new Set(['18:30']));
  });

  // whole body on Monday and Thursday, Thursday missed: on Friday or Saturday, not on Sunday
  it('make a missed one up on Friday or Saturday', () => {
    const text = details({
      ...two,
      firstDay: '2026-03-06',
      weeks: '1',
      past: '1_done_2026-03-02_18:30~1_missed_2026-03-05_18:30',
      fixed: '1_2026-03-09_18:30~1_2026-03-12_18:30',
    });
    expect(text).toMatch(/Whole body is made up on Fri 6 Mar, 18:30/);
    expect(text).toMatch(/could also begin on Sat 7 Mar, 18:30\./);
  });
});

describe('a rota of 28 days', () => {
  const rota = {
    sessions: 'whole_3_0_75_any',
    perWeek: '',
    pattern: 'rota',
    rota: 'day_2~night_2~off_5~day_2~night_3~off_4~day_3~night_2~off_5',
    away: '',
    lightEvery: '',
  };

  it('holds nine sessions or more, light on day shifts, never on two nights on end', async () => {
    const plan = await planOf(rota);
    expect(plan.length).toBeGreaterThanOrEqual(9);
    const at = (time: string) => plan.filter(([start]) => start.endsWith(time));
    for (const [, , light] of at('19:30')) expect(light).toBe(true);
    const nights = at('13:00').map(([start]) => start);
    for (const [place, start] of nights.slice(1).entries()) {
      expect(hoursBetween(nights[place] ?? '', start)).toBeGreaterThan(24);
    }
  });
});

describe('what cannot be', () => {
  it('keeps fixed sessions, and says which of them come too early', () => {
    const hard = { sessions: 'legs_4_0_60_any', away: '', lightEvery: '' };
    const both = { ...hard, fixed: '1_2026-03-10_18:30~1_2026-03-11_18:30' };
    const answer = refused(both);
    expect(answer.reason).toBe('fixed-sessions-conflict');
    expect(viewText(answer.view?.())).toMatch(/Legs on Wed 11 Mar, 18:30 comes too early for/);
    expect(shownResult(calendar, { ...hard, fixed: '1_2026-03-10_18:30' }).snippet).toMatch(
      /2026-03-10T18:30/,
    );
  });

  it('says when nothing fits, day by day, and what would help', () => {
    const answer = refused({ week: '0_18:30_19:00', away: '', lightEvery: '' });
    expect(answer.reason).toBe('nothing-fits');
    expect(viewText(answer.view?.())).toMatch(/Mon 2 Mar: less time than Pull takes/);
    expect(viewText(answer.details?.())).toMatch(/Sessions shorter by 30 min: 1 session\./);
  });

  it('refuses stays upside down and sessions that are none', () => {
    expect(refused({ away: '2026-03-19_2026-03-17_none_07:00_08:00' }).reason).toBe(
      'stay-upside-down',
    );
    expect(refused({ fixed: '5_2026-03-10_18:30' }).reason).toBe('no-such-session');
  });
});

describe('planIdOf', () => {
  it('makes one name of small letters, digits and hyphens', () => {
    expect(planIdOf('  Boathouse crew, Åse ')).toBe('boathouse-crew-ase');
    expect(planIdOf('!')).toBe('training');
  });
});
