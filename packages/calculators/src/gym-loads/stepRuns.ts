import type { Load } from '@windlass/core/load';

/** Loads at one distance from each other, or one load alone. */
export interface StepRun {
  readonly first: Load;
  readonly last: Load;
  /** 0 for a load alone. */
  readonly step: Load;
}

/** Loads in order as runs with one step each: 4 to 24 by 2, then 28 to 32 by 2. */
export function stepRuns(loads: readonly Load[]): readonly StepRun[] {
  const runs: StepRun[] = [];
  let from = 0;
  while (from < loads.length) {
    const step = at(from + 1) - at(from);
    let to = from + 1;
    while (to < loads.length - 1 && at(to + 1) - at(to) === step) to += 1;
    const isRun = to - from >= 2;
    const last = isRun ? to : from;
    runs.push({ first: at(from), last: at(last), step: (isRun ? step : 0) as Load });
    from = last + 1;
  }
  return runs;

  function at(place: number): Load {
    return loads[place] ?? (0 as Load);
  }
}
