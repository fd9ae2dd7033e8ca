import { kg } from '../../packages/core/src/load/index.ts';
import {
  generalCurve,
  oneRepMaxKg,
  type PerformedSet,
  priorFor,
  strengthFrom,
} from '../../packages/core/src/strength/index.ts';
import { type Seeded, seeded } from './seeded.ts';
import { simulatedLifter } from './simulatedLifter.ts';

/** How the interval of the one-rep max did after weeks of one kind of log. */
export interface LogCoverage {
  readonly log: string;
  /** Share of the lifters whose one-rep max lay inside the 80 % interval. */
  readonly held: number;
  /** Mean of ln(likely / true): 0.05 is 5 % too high. */
  readonly bias: number;
}

/** One set to failure a week, the same count aimed at every week. */
interface Log {
  readonly says: string;
  readonly weeks: number;
  /** Share by which the lifter grows stronger every week. */
  readonly gain: number;
}

const logs: readonly Log[] = [
  { says: '26 weeks, 1.2 % stronger every week', weeks: 26, gain: 0.012 },
  { says: '52 weeks, 0.8 % stronger every week', weeks: 52, gain: 0.008 },
  { says: '52 weeks, no stronger', weeks: 52, gain: 0 },
];

/**
 * Logs as people keep them: loads that follow the strength, so that the counts hardly differ. They
 * say little about endurance, and must not be taken to say it is low.
 */
export function logCoverage(seed: number, lifters: number): readonly LogCoverage[] {
  return logs.map((log) => {
    const source = seeded(seed);
    let held = 0;
    let error = 0;
    for (let trial = 0; trial < lifters; trial += 1) {
      const { sets, oneRepMax } = kept(log, source);
      const belief = strengthFrom({ sets, prior: priorFor(generalCurve), today: 7 * log.weeks });
      if (belief.kind !== 'posterior') throw new Error(belief.kind);
      const { low, likely, high } = oneRepMaxKg(belief);
      if (oneRepMax > low && oneRepMax < high) held += 1;
      error += Math.log(likely / oneRepMax);
    }
    return { log: log.says, held: held / lifters, bias: error / lifters };
  });
}

function kept({ weeks, gain }: Log, source: Seeded) {
  const lifter = simulatedLifter(source);
  const first = lifter.choose(source.whole(6, 12));
  const gained = (week: number) => (1 + gain) ** week;
  const sets = Array.from({ length: weeks + 1 }, (_, week): PerformedSet => {
    const loadKg = Math.max(1.25, 1.25 * Math.round((first * gained(week)) / 1.25));
    lifter.wake();
    return {
      load: kg(loadKg),
      reps: lifter.fail(loadKg / gained(week)),
      end: { kind: 'failure' },
      day: 7 * week,
      secondsPerRep: 3,
    };
  });
  return { sets, oneRepMax: lifter.oneRepMaxKg() * gained(weeks) };
}
