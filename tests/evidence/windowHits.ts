import { kg, toKg } from '../../packages/core/src/load/index.ts';
import {
  generalCurve,
  loadForWindow,
  oneRepMaxEquations,
  oneRepMaxKg,
  type PerformedSet,
  priorFor,
  strengthFrom,
} from '../../packages/core/src/strength/index.ts';
import { seeded } from './seeded.ts';
import { simulatedLifter } from './simulatedLifter.ts';

const windows = [
  { minReps: 5, maxReps: 7 },
  { minReps: 8, maxReps: 11 },
  { minReps: 12, maxReps: 15 },
] as const;

/** Each published equation as a rule: one-rep max from the last set, back to the window's middle. */
const rules = oneRepMaxEquations.filter(({ lift }) => lift === undefined);
const loads = Array.from({ length: 100 }, (_, index) => 5 + 2.5 * index);

/** How often failure landed in a rep window, by the library and by the best single equation. */
export interface WindowHits {
  readonly window: string;
  /** Share of trials, by the library's best load. */
  readonly ours: number;
  /** The published equation that hit this window most often. */
  readonly best: string;
  /** Share of trials, by that equation. */
  readonly theirs: number;
}

/** Window hits over so many simulated lifters; the same seed gives the same lifters. */
export function windowHits(seed: number, trials: number): readonly WindowHits[] {
  const { ours, theirs } = hits(seed, trials);
  return windows.map(({ minReps, maxReps }, place) => {
    const counts = theirs.map((byWindow) => byWindow[place] ?? 0);
    const most = Math.max(...counts);
    return {
      window: `${minReps} to ${maxReps}`,
      ours: (ours[place] ?? 0) / trials,
      best: rules[counts.indexOf(most)]?.id ?? '',
      theirs: most / trials,
    };
  });
}

function hits(seed: number, trials: number) {
  const source = seeded(seed);
  const ours = windows.map(() => 0);
  const theirs = rules.map(() => windows.map(() => 0));
  for (let trial = 0; trial < trials; trial += 1) {
    const lifter = simulatedLifter(source);
    const sets: PerformedSet[] = [];
    for (let day = 0, left = source.whole(1, 6); left > 0; left -= 1, day += 3) {
      lifter.wake();
      const load = lifter.choose(source.whole(4, 20));
      const reps = lifter.fail(load);
      sets.push({ load: kg(load), reps, end: { kind: 'failure' }, day, secondsPerRep: 3 });
      lifter.wait(3);
    }
    lifter.wake();
    const error = source.normal();
    const today = 3 * sets.length;
    const belief = strengthFrom({ sets, prior: priorFor(generalCurve), today });
    if (belief.kind !== 'posterior') throw new Error(belief.kind);
    // lighter ones give over thirty repetitions and heavier ones none
    const max = oneRepMaxKg(belief, 0.8, 'today');
    const choices = loads
      .filter((load) => load > 0.4 * max.low && load < 1.05 * max.high)
      .map((load) => ({ load: kg(load) }));
    windows.forEach((window, place) => {
      const lands = (load: number) => {
        const reps = lifter.fail(load, error);
        return reps >= window.minReps && reps <= window.maxReps ? 1 : 0;
      };
      const answer = loadForWindow({ posterior: belief, choices, window, secondsPerRep: 3 });
      if (answer.kind === 'found') add(ours, place, lands(toKg(answer.best.choice.load)));
      const last = sets.at(-1) as PerformedSet;
      rules.forEach((rule, index) => {
        const reps = Math.max(1, last.reps);
        const usual = reps === 1 ? toKg(last.load) : rule.oneRepMaxKg(toKg(last.load), reps);
        const target = usual / rule.oneRepMaxKg(1, (window.minReps + window.maxReps) / 2);
        const load = Math.min(252.5, Math.max(5, 2.5 * Math.round(target / 2.5)));
        add(theirs[index] ?? [], place, lands(load));
      });
    });
  }
  return { ours, theirs };
}

function add(counts: number[], place: number, one: number): void {
  counts[place] = (counts[place] ?? 0) + one;
}
