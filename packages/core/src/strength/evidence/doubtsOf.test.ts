import { describe, expect, it } from 'vitest';
import { kg } from '../../load/index.ts';
import { forecastDoubts } from '../ForecastDoubt.ts';
import { generalCurve } from '../generalCurve.ts';
import { priorFor } from '../priorFor.ts';
import type { StrengthPosterior } from '../StrengthPosterior.ts';
import { strengthFrom } from '../strengthFrom.ts';
import { doubtsOf } from './doubtsOf.ts';

const prior = priorFor(generalCurve, { kg: 100, doubt: 0.1 });
const cells = { columns: 8, rows: 8 };
const belief = strengthFrom({ sets: [], prior, today: 0, cells }) as StrengthPosterior;
const doubts = (
  set: { load?: number; secondsPerRep?: number | undefined },
  reps = 10,
  binding: StrengthPosterior['binding'] = 'both-sides',
) => {
  const { load = 80 } = set;
  const secondsPerRep = 'secondsPerRep' in set ? set.secondsPerRep : 3;
  const conditions = { load: kg(load), ...(secondsPerRep !== undefined && { secondsPerRep }) };
  return doubtsOf({ ...belief, binding }, conditions, { oneRepMaxKg: 100, reps });
};

describe('doubtsOf', () => {
  it('has none from half of the one-rep max, to 20 repetitions, at 2 to 10 seconds', () => {
    for (const set of [{ load: 50 }, { secondsPerRep: 2 }, { secondsPerRep: 10 }]) {
      expect(doubts(set)).toEqual([]);
    }
    expect(doubts({}, 20)).toEqual([]);
  });

  it('has one for everything beyond', () => {
    expect(doubts({ load: 49.9 })).toEqual(['light-load']);
    expect(doubts({}, 21)).toEqual(['many-reps']);
    expect(doubts({ secondsPerRep: 1.9 })).toEqual(['pace-too-fast']);
    expect(doubts({ secondsPerRep: 10.1 })).toEqual(['pace-too-slow']);
    expect(doubts({ secondsPerRep: undefined })).toEqual(['pace-unknown']);
    for (const binding of ['floor-only', 'ceiling-only', 'prior-only'] as const) {
      expect(doubts({}, 10, binding)).toEqual([binding]);
    }
  });

  it('says of each what it rests on', () => {
    for (const { reason, source } of Object.values(forecastDoubts)) {
      expect(reason).not.toBe('');
      expect(source.id).not.toBe('');
    }
  });
});
