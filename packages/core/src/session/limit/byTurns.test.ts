import { describe, expect, it } from 'vitest';
import { client, gym, pulldown } from '../boathouse.testing.ts';
import type { LiftIntent } from '../Intent.ts';
import type { LaidOut } from '../layOut.ts';
import { liftOf } from '../liftOf.ts';
import type { SettledLift, UnsettledLift } from '../settleLift.ts';
import { byTurns } from './byTurns.ts';

type Wanted = SettledLift | UnsettledLift;

function lift(exercise: string, equipment: string, change: Partial<LiftIntent> = {}): Wanted {
  const found = liftOf({ ...pulldown, exercise, equipment, ...change }, gym, client.bodyWeight);
  if (found.kind !== 'lift') throw new Error(found.message);
  return { kind: 'settled', lift: found, overruled: {}, refused: [] };
}

const pull = lift('cable-pulldown', 'pulldown');
const press = lift('dumbbell-bench-press', 'dumbbells');
const curl = lift('dumbbell-curl', 'dumbbells');
const chin = lift('chin-up', 'station');
const row = lift('barbell-bent-over-row', 'short-bar');
const join = { kind: 'in-turn', transitionSeconds: 10 } as const;
const joined = lift('dumbbell-bench-press', 'dumbbells', { join });
const gone: Wanted = { kind: 'unsettled', intent: pulldown, reason: 'limits', message: '' };

/** Plans every joined lift as asked, but for those at the places given. */
function turns(lifts: readonly Wanted[], minutesAtMost = 20, refused: readonly number[] = []) {
  const asked: (readonly Wanted[])[] = [];
  const found = byTurns(lifts, minutesAtMost, (wanted) => {
    asked.push(wanted);
    const plans = wanted.map((one, at) => {
      const how = one.kind === 'settled' ? one.lift.intent.join : undefined;
      return { kind: 'planned', ...(how && !refused.includes(at) && { join: how }) };
    });
    return { lifts: plans, timeline: [], minutes: { total: 14.2 } } as unknown as LaidOut;
  });
  return { found, asked };
}

describe('byTurns', () => {
  it('joins neighbours that work different muscles, two by two', () => {
    const { found, asked } = turns([pull, press, curl, chin]);
    expect(found?.lifts).toEqual([
      [0, 1],
      [2, 3],
    ]);
    expect(found?.minutes).toBe(14.2);
    const joins = asked[0]?.map((one) =>
      one.kind === 'settled' ? one.lift.intent.join : undefined,
    );
    const how = { kind: 'in-turn', transitionSeconds: 30 };
    expect(joins).toEqual([how, undefined, how, undefined]);
  });

  it('says which, and whether nothing would be left out', () => {
    expect(turns([pull, press, curl, chin]).found?.message).toBe(
      'By turns, 30 s between: Cable pulldown and Dumbbell bench press; Dumbbell curl and Chin-up. The session would take 15 minutes with every rest as long as before, and nothing would be left out.',
    );
    expect(turns([pull, press], 14.2).found?.message).toMatch(/, and nothing would be left out\.$/);
    expect(turns([pull, press], 14).found?.message).toMatch(/, which is still too long\.$/);
  });

  it('passes over neighbours for one muscle, lifts that are left out, and those that are joined', () => {
    expect(turns([pull, chin]).found).toBeUndefined();
    // both are done for the lats, though only the pulldown for teres major as well
    expect(turns([pull, row]).found).toBeUndefined();
    expect(turns([pull, chin, press]).found?.lifts).toEqual([[1, 2]]);
    expect(turns([pull, gone, press]).found).toBeUndefined();
    expect(turns([gone, pull, press]).found?.lifts).toEqual([[1, 2]]);
    expect(turns([pull, joined, curl]).found).toBeUndefined();
    // the curl is already done by turns with the press before it
    expect(turns([joined, curl, pull]).found).toBeUndefined();
    expect(turns([pull]).found).toBeUndefined();
    expect(turns([]).found).toBeUndefined();
    expect(turns([pull, chin]).asked).toEqual([]);
  });

  it('offers only what can be planned so', () => {
    expect(turns([pull, press, curl, chin], 20, [0]).found?.lifts).toEqual([[2, 3]]);
    expect(turns([pull, press], 20, [0]).found).toBeUndefined();
  });
});
