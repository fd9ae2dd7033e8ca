import { describe, expect, it } from 'vitest';
import { cautionsFor } from '../cautionsFor.ts';
import { pregnancyStopRules, stopRules } from '../stopRules.ts';
import { ageRules } from './ageRules.ts';
import { bloodPressureRules } from './bloodPressureRules.ts';
import { complaintRules } from './complaintRules.ts';
import { pregnancyRules } from './pregnancyRules.ts';
import { redFlagRules } from './redFlagRules.ts';
import { screeningRules } from './screeningRules.ts';
import { workRules } from './workRules.ts';

const cautions = [
  ...screeningRules,
  ...bloodPressureRules,
  ...ageRules,
  ...pregnancyRules,
  ...workRules,
  ...redFlagRules,
  ...complaintRules,
].map((rule) => rule.caution);

/** Words that would promise or judge instead of deferring. */
const NEVER =
  /\b(safe|safely|safety|cleared?|guarantee[ds]?|diagnos\w+|cure[ds]?|painkiller\w*)\b/i;

describe('the caution tables', () => {
  it.each(cautions)(
    '$id says what, why, what instead, whom to ask and where it is from',
    (caution) => {
      expect(caution.what.length).toBeGreaterThan(10);
      expect(caution.why.length).toBeGreaterThan(10);
      expect(caution.instead.length).toBeGreaterThan(10);
      expect(caution.sources.length).toBeGreaterThan(0);
      if (caution.level === 'stop') expect(caution.ask.length).toBeGreaterThan(0);
      expect(`${caution.what} ${caution.why} ${caution.instead}`).not.toMatch(NEVER);
    },
  );

  it('name each caution once', () => {
    const ids = cautions.map(({ id }) => id);
    expect(ids).toEqual([...new Set(ids)]);
  });

  it('advise nobody to change or leave out medicine', () => {
    for (const { instead } of cautions)
      expect(instead).not.toMatch(/(skip|stop|change|lower).{0,20}(medicine|tablet|dose)/i);
  });
});

describe('the stop rules', () => {
  it('name each sign once and say what to do', () => {
    const all = [...stopRules, ...pregnancyStopRules];
    expect(new Set(all.map(({ id }) => id)).size).toBe(all.length);
    for (const rule of all) {
      expect(rule.action.length).toBeGreaterThan(10);
      expect(rule.sources.length).toBeGreaterThan(0);
      expect(`${rule.sign} ${rule.action}`).not.toMatch(NEVER);
    }
  });

  // The two lists of the published stop rules (ACSM guidelines, recalled), sign by sign.
  it.each([
    'chest',
    'fainting',
    'light-headedness',
    'breathlessness',
    'palpitations',
    'confusion',
    'severe headache',
    'weakness',
    'numbness',
    'bladder or bowel',
    'sharp',
    'catching',
    'pop',
    'loss of strength',
    'rises from set to set',
    'runs down a limb',
    'dark',
  ])('cover %s', (sign) => {
    expect(stopRules.some((rule) => rule.sign.toLowerCase().includes(sign))).toBe(true);
  });
});

describe('figures quoted in the cautions', () => {
  const why = (id: string) => cautions.find((caution) => caution.id === id)?.why ?? '';

  // MacDougall 1985: 320/250 mmHg, five men; Narloch 1995: 311/284 and 198/175 mmHg, ten men.
  it('are those of the published pressures', () => {
    expect(why('blood-pressure-untreated')).toContain('320/250 mmHg');
    expect(why('blood-pressure-treated')).toContain('311/284 mmHg');
    expect(why('blood-pressure-treated')).toContain('198/175');
  });

  // Clarkson 2006: 51 of 203 people (25 %) above 10,000 U/L on day 4.
  it('are those of the published muscle breakdown', () => {
    expect(Math.round((51 / 203) * 100)).toBe(25);
    expect(why('first-lowering-heavy-work')).toContain('a quarter of 203');
  });

  // American Heart Association 2007, recalled: 180/110 absolute, 160/100 relative.
  it.each([
    [179, 99, 'blood-pressure-reading-high'],
    [150, 100, 'blood-pressure-reading-high'],
    [180, 80, 'blood-pressure-reading-very-high'],
    [150, 110, 'blood-pressure-reading-very-high'],
  ])('set the reading %d/%d to %s', (systolic, diastolic, id) => {
    const bloodPressure = { status: 'untreated', reading: { systolic, diastolic } } as const;
    expect(cautionsFor({ bloodPressure })[0]?.id).toBe(id);
  });

  it('leave 159/99 to the physician’s general word', () => {
    const bloodPressure = { status: 'treated', reading: { systolic: 159, diastolic: 99 } } as const;
    const ids = cautionsFor({ bloodPressure }).map(({ id }) => id);
    expect(ids).not.toContain('blood-pressure-reading-high');
  });
});

describe('joint complaints', () => {
  const row = (complaint: string) => complaintRules.find((rule) => rule.complaint === complaint);

  // Copied from the rows behind the table: what each names as the provoking position.
  it.each([
    ['shoulder-slips-or-unstable', 'shoulder-high-five', '10.1519/JSC.0b013e318269f776'],
    ['shoulder-slips-or-unstable', 'shoulder-behind-trunk', 'clinical extension, recalled'],
    ['shoulder-raising-the-arm', 'shoulder-raised-turned-in', 'JSCR 2014;28(4):1081-1089'],
    ['knee-front', 'knee-bent-past-60', 'JOSPT 2014;44(5):320'],
    ['knee-front', 'knee-straightened-against-load', 'JOSPT 2014;44(5):320'],
    ['elbow-outer', 'elbow-palms-down-pull', '10.2519/jospt.2022.0302, recalled'],
    ['hip-front-deep-bend', 'hip-deep-bend', 'PMC2635464, advice recalled'],
  ])('%s avoids %s (%s)', (complaint, position) => {
    expect(row(complaint)?.avoid).toContain(position);
  });

  // 10.2519/jospt.2020.9218: bending was not linked to back pain, so nothing is banned outright.
  it('low-back bans no position', () => {
    expect(row('low-back')?.avoid).toEqual([]);
  });
});
