import { describe, expect, it } from 'vitest';
import { reportEffects } from './reportEffects.ts';

describe('reportEffects', () => {
  it('looks soreness up by muscle', () => {
    const reports = { soreness: { vasti: 'severe', glutes: 'slight' } } as const;
    expect(reportEffects('vasti', reports).map(({ factor }) => factor)).toEqual([1.6]);
    expect(reportEffects('glutes', reports)).toEqual([]);
    expect(reportEffects('chest', reports)).toEqual([]);
  });

  it('adds a tenth for each short night, three at most, and says so', () => {
    const factors = [1, 2, 3, 9].map((shortNights) => reportEffects('chest', { shortNights })[0]);
    expect(factors.map((effect) => effect?.factor)).toEqual([1.1, 1.2, 1.3, 1.3]);
    expect(factors[1]?.says).toContain('20 %');
    expect(factors[1]?.report).toBe('short-nights');
  });

  it('names the study and the choice behind every effect', () => {
    for (const { sources } of reportEffects('chest', {
      soreness: { chest: 'clear' },
      shortNights: 1,
    })) {
      expect(sources.map(({ standing }) => standing)).toEqual(['verified', 'convention']);
    }
  });

  it('refuses a number of nights that cannot be', () => {
    const nights = (shortNights: number) => () => reportEffects('chest', { shortNights });
    for (const count of [0, 60]) expect(nights(count)).not.toThrow();
    for (const count of [-1, 61]) {
      expect(nights(count)).toThrow('reportEffects: shortNights must be');
    }
  });

  it('says how much longer for the soreness it is about', () => {
    const says = (soreness: 'clear' | 'severe') =>
      reportEffects('chest', { soreness: { chest: soreness } })[0]?.says;
    expect(says('clear')).toContain('a quarter longer');
    expect(says('severe')).toContain('1.6 times');
  });
});
