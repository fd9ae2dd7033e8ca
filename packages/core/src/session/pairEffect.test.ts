import { describe, expect, it } from 'vitest';
import { kg, loadFromValue } from '../load/index.ts';
import { planPair } from '../pairing/index.ts';
import { enduranceCurves, kappaBand, priorFor, strengthFrom } from '../strength/index.ts';
import { pulldown } from './boathouse.testing.ts';
import { joined, kilos, pair, planned, straightArm, strong } from './rounds.testing.ts';

describe('a pair', () => {
  it('does to its second lift what the pairing of the two says', () => {
    const bloodPressure = { status: 'treated', doctorAgrees: true } as const;
    const treated = { ...strong, health: { ...strong.health, bloodPressure } };
    for (const [who, repsLeft] of [
      [strong, 0],
      [treated, 2],
    ] as const) {
      const { a, b } = joined(pair, straightArm, pulldown, who);
      const [alone] = planned([pulldown], who);
      const pace = (exercise: string) => {
        const sets = who.sets.filter((set) => set.exercise === exercise);
        const belief = strengthFrom({
          sets: sets.map(({ load, reps, end }) => ({
            load: loadFromValue(load),
            reps,
            end,
            day: 0,
            secondsPerRep: 6,
          })),
          prior: priorFor(
            enduranceCurves[
              a.lift.exercise.id === exercise
                ? a.lift.exercise.endurance
                : b.lift.exercise.endurance
            ],
          ),
          today: 7,
        });
        if (belief.kind !== 'posterior') throw new Error(belief.kind);
        return { kappa: kappaBand(belief).likely, alpha: belief.alpha };
      };
      const told = planPair({
        target: ['lats', 'teres-major'],
        isolation: {
          exercise: a.lift.exercise,
          reps: a.sets[0]?.reps.likely ?? 0,
          repsLeft,
          secondsPerRep: 6,
          curve: pace('straight-arm-cable-pulldown'),
        },
        compound: {
          exercise: b.lift.exercise,
          usual: {
            load: alone?.work.choice.load ?? kg(0),
            reps: alone?.work.reps.likely ?? 0,
          },
          secondsPerRep: 6,
          curve: pace('cable-pulldown'),
        },
        transitionSeconds: 10,
      });
      if (told.kind !== 'allowed') throw new Error(told.kind);
      const { usual, ...effect } = b.join?.effect ?? {};
      expect(usual?.choice.load).toBe(alone?.work.choice.load);
      const { loadShare, recovered, sharePerRep, cautions } = told;
      expect(effect).toEqual({ loadShare, recovered, sharePerRep, cautions });
    }
  });

  it('lets neither lift rest while the other works', () => {
    // nobody waits, so the isolation lift is at least as tired as straight after its first set
    const lift = { ...straightArm, restSeconds: 0 };
    const { a } = joined({ ...pair, transitionSeconds: 0 }, lift, {
      ...pulldown,
      sets: 1,
      restSeconds: 0,
    });
    const [alone] = planned([lift]);
    expect(a.sets[1]?.capacity).toBeLessThan(alone?.sets[1]?.capacity ?? 0);
  });
});

describe('a pair at the ends of what there is', () => {
  const crawl = { ...pulldown.tempo, lowerSeconds: 50, liftSeconds: 50 };
  const dash = { ...pulldown.tempo, lowerSeconds: 0, liftSeconds: 0.2 };

  it.each([
    [
      'a hundred repetitions and more before',
      { ...straightArm, overrules: { load: kilos(2.5) } },
      pulldown,
    ],
    [
      'a hundred repetitions and more after',
      straightArm,
      { ...pulldown, overrules: { load: kilos(7.5) } },
    ],
    [
      'minutes a repetition',
      { ...straightArm, tempo: crawl, window: { minReps: 1, maxReps: 4 } },
      pulldown,
    ],
    [
      'a blink a repetition',
      { ...straightArm, tempo: dash, window: { minReps: 20, maxReps: 60 } },
      pulldown,
    ],
  ])('has its effect: %s', (_, first, second) => {
    const { b } = joined(pair, first, second);
    const { low, likely, high } = b.join?.effect?.loadShare ?? { low: 0, likely: 0, high: 0 };
    expect(low).toBeGreaterThan(0);
    expect(likely).toBeGreaterThanOrEqual(low);
    expect(high).toBeGreaterThanOrEqual(likely);
    expect(high).toBeLessThanOrEqual(1);
  });
});
