import { kg } from '../../packages/core/src/load/index.ts';
import {
  forecastReps,
  generalCurve,
  oneRepMaxKg,
  type PerformedSet,
  priorFor,
  type SetEnd,
  strengthFrom,
} from '../../packages/core/src/strength/index.ts';
import { type Seeded, seeded } from './seeded.ts';
import { type SimulatedLifter, simulatedLifter } from './simulatedLifter.ts';

/** How often 80 % intervals held over simulated lifters, and how wide they were. */
export interface Coverage {
  /** Share of trials whose one-rep max, free of the day's form, lay inside. */
  readonly usual: number;
  /** The same for the one-rep max of the day. */
  readonly today: number;
  /** The same for the count of the next set to failure. */
  readonly reps: number;
  /** Mean of ln(high / low) of the usual one-rep max. */
  readonly width: number;
}

/**
 * Coverage of 80 % intervals over so many simulated lifters, each with a history of one to six
 * sessions; the same seed gives the same lifters.
 */
export function intervalCoverage(seed: number, wanted: number): Coverage {
  const source = seeded(seed);
  const held = { usual: 0, today: 0, reps: 0 };
  let width = 0;
  let trials = 0;
  while (trials < wanted) {
    const lifter = simulatedLifter(source);
    const sets = history(lifter, source);
    const today = sets.at(-1)?.day ?? 0;
    const belief = strengthFrom({ sets, prior: priorFor(generalCurve), today });
    if (belief.kind !== 'posterior' || belief.binding !== 'both-sides') continue;
    trials += 1;
    const usual = oneRepMaxKg(belief);
    const now = oneRepMaxKg(belief, 0.8, 'today');
    const truth = lifter.oneRepMaxKg();
    if (truth > usual.low && truth < usual.high) held.usual += 1;
    if (truth * lifter.form() > now.low && truth * lifter.form() < now.high) held.today += 1;
    width += Math.log(usual.high / usual.low);
    const load = Math.max(2.5, 2.5 * Math.round((truth * (0.6 + 0.35 * source.even())) / 2.5));
    const { chances } = forecastReps(belief, { load: kg(load), secondsPerRep: 3 });
    const got = lifter.fail(load);
    // a whole count covers a stretch of probability: a point in it, drawn evenly
    const place = sum(chances, 0, got) + source.even() * (chances[got] ?? 0);
    if (place > 0.1 && place < 0.9) held.reps += 1;
  }
  const share = (count: number) => count / wanted;
  return {
    usual: share(held.usual),
    today: share(held.today),
    reps: share(held.reps),
    width: width / wanted,
  };
}

/**
 * One to six sessions of one to three sets: half to failure, the rest stopped with some left or at
 * the target; three in a hundred counts noted wrongly.
 */
function history(lifter: SimulatedLifter, source: Seeded): readonly PerformedSet[] {
  const sets: PerformedSet[] = [];
  let day = 0;
  const sessions = source.whole(1, 6);
  for (let session = 0; session < sessions; session += 1) {
    if (session > 0) {
      const days = source.whole(2, 7);
      lifter.wait(days);
      day += days;
    }
    lifter.wake();
    for (let left = source.whole(1, 3); left > 0; left -= 1) sets.push(oneSet(lifter, source, day));
  }
  return sets;
}

function oneSet(lifter: SimulatedLifter, source: Seeded, day: number): PerformedSet {
  const target = source.whole(4, 20);
  const load = lifter.choose(target);
  const failure = lifter.fail(load);
  const draw = source.even();
  let [reps, end]: [number, SetEnd] = [failure, { kind: 'failure' }];
  const left = source.whole(1, 4);
  if (draw < 0.3 && failure > left) {
    [reps, end] = [failure - left, { kind: 'reserve', repsLeft: lifter.say(left) }];
  } else if (draw < 0.5 && failure > target) {
    [reps, end] = [target, { kind: 'more', atLeast: 1 }];
  } else if (source.even() < 0.03) {
    reps = Math.max(1, failure + Math.round(5 * source.normal()));
  }
  return { load: kg(load), reps, end, day, secondsPerRep: 3 };
}

function sum(chances: readonly number[], from: number, to: number): number {
  return chances.slice(from, to).reduce((total, chance) => total + chance, 0);
}
