import { describe, expect, it } from 'vitest';
import type { ReachableLoad } from '../equipment/index.ts';
import { kg, toKg } from '../load/index.ts';
import { findingLift } from './findingLift.ts';
import { questionOf } from './liftQuestion.testing.ts';

const basis = { sets: 0, passedOver: [] };
const chain = { stages: [{ kind: 'hold', at: 'middle', maxSeconds: 20 }] } as const;
const kilos = (value: number) => ({ value, unit: 'kg' }) as const;

function found(...args: Parameters<typeof questionOf>) {
  const lift = findingLift(questionOf(...args), basis);
  if (lift.kind !== 'finding') throw new Error(lift.message);
  return lift;
}

describe('findingLift', () => {
  it('begins with the lightest load, with nothing fixed or refused', () => {
    const lift = found();
    expect(toKg(lift.firstTry.shown)).toBe(7.5);
    expect(lift).toMatchObject({ basis, secondsPerRep: 6 });
    expect(lift.overruled).toStrictEqual({});
    expect(lift.refused).toEqual([]);
    expect(lift).not.toHaveProperty('chosenFor');
    const same = found({ overrules: { load: kilos(7.5) } });
    expect(same.overruled).toStrictEqual({});
    expect(same.refused).toEqual([]);
    const chosenFor = { muscles: ['lats'], reasons: ['Known.'] } as const;
    expect(found({}, { chosenFor }).chosenFor).toEqual(chosenFor);
  });

  it('begins with a fixed load, or says why not', () => {
    const fixed = found({ overrules: { load: kilos(20) } });
    expect(toKg(fixed.firstTry.shown)).toBe(20);
    expect(fixed.overruled.load?.chosen && toKg(fixed.overruled.load.chosen.shown)).toBe(7.5);
    expect(fixed.refused).toEqual([]);
    const refused = found({ overrules: { load: kilos(21) } });
    expect(toKg(refused.firstTry.shown)).toBe(7.5);
    expect(refused.overruled).toStrictEqual({});
    expect(refused.refused).toMatchObject([{ what: 'load', code: 'session.load-not-here' }]);
  });

  it('refuses to go on past failure, but for what the time takes anyway', () => {
    const before = { what: 'sets', code: 'session.sets-out-of-range', message: '' } as const;
    const refused = found({ chain }, { refused: [before] }).refused;
    expect(refused).toMatchObject([before, { what: 'chain', code: 'session.chain-load-unknown' }]);
    expect(found({ chain }, { skipChain: true }).refused).toEqual([]);
    expect(found({}, { skipChain: true }).refused).toEqual([]);
  });

  it('is left out where there is nothing to begin with', () => {
    const asked = questionOf();
    const [first] = asked.lift.loads.loads;
    const empty: ReachableLoad = { ...first, load: kg(0), shown: kg(0) };
    const lift = { ...asked.lift, loads: { ...asked.lift.loads, loads: [empty] as const } };
    expect(findingLift({ ...asked, lift }, basis)).toMatchObject({
      kind: 'left-out',
      intent: asked.lift.intent,
      reason: 'no-loads',
      exchanges: [],
    });
  });
});
