import {
  elapsedTime,
  hoursUntilReady,
  learnRecovery,
  type MuscleReadiness,
  muscleDose,
  type PerformanceReport,
  type ReadinessOptions,
  type ReadyHours,
  readiness,
} from '@windlass/core/recovery';
import type { NoAnswer } from '../contract/Answer.ts';
import type { Computed } from '../contract/Definition.ts';
import { muscleOf, type NextDateInput } from './fields.ts';
import { nothingShared } from './nothingShared.tsx';
import { said } from './words.ts';
import { nextWork, workOf } from './workOf.ts';

export interface NextDateResult {
  /** When it began: wall time. */
  readonly start: string;
  readonly options: ReadinessOptions;
  readonly reports: readonly PerformanceReport[];
  /** Every muscle trained, the last to be ready first. */
  readonly muscles: readonly MuscleReadiness[];
  /** Those that the next session trains too; all of them when it is not known. */
  readonly shared: readonly [MuscleReadiness, ...MuscleReadiness[]];
  /** When all of these are ready. */
  readonly ready: ReadyHours;
  /** Hours from the start to the start that is planned; `null` without one. */
  readonly plannedIn: number | null;
}

/** When each muscle is ready again, and when the session after it can be. */
export function computeNextDate(input: NextDateInput): Computed<NextDateResult> {
  const work = workOf(input);
  if (muscleDose(work, input.status).some(({ hardSets }) => hardSets > MOST_SETS)) return tooMuch;
  const reports = reportsOf(input);
  const options = optionsOf(input, reports);
  const muscles = readiness([{ hoursAgo: 0, work }], options);
  const next = muscleDose(nextWork(input)).map(({ muscle }) => muscle);
  const [first, ...others] = muscles.filter(
    ({ muscle }) => next.length === 0 || next.includes(muscle),
  );
  const start = `${input.on}T${input.at}`;
  if (first === undefined) return nothingShared(input, start, muscles);
  const shared = [first, ...others] as const;
  const last = (at: keyof ReadyHours) => Math.max(...shared.map(({ readyIn }) => readyIn[at]));
  return {
    kind: 'result',
    result: {
      start,
      options,
      reports,
      muscles,
      shared,
      ready: { earliest: last('earliest'), likely: last('likely'), cautious: last('cautious') },
      plannedIn: plannedIn(input, start),
    },
  };
}

/** What `hoursUntilReady` takes for one muscle. */
const MOST_SETS = 1000;

const tooMuch = {
  kind: 'none',
  reason: 'too-much',
  headline: said.noDate,
  message: said.tooMuch,
} as const satisfies NoAnswer;

/** Hours to the planned start; nothing for one that does not lie after the session. */
function plannedIn({ plannedOn, plannedAt, zone }: NextDateInput, start: string): number | null {
  if (plannedOn === null) return null;
  const { hours } = elapsedTime(start, `${plannedOn}T${plannedAt}`, zone);
  return hours > 0 ? hours : null;
}

/** Earlier times are held against the hours that anyone would be expected to take after this session. */
function reportsOf(input: NextDateInput): readonly PerformanceReport[] {
  const most = muscleDose(workOf(input), input.status)[0]?.hardSets ?? 0;
  const hoursExpected = hoursUntilReady(most, input.status).likely;
  return input.before.map(({ hours, reps, forecast }) => ({
    hoursSince: hours,
    hoursExpected,
    reps,
    repsForecast: forecast,
  }));
}

function optionsOf(
  { status, shortNights, sore }: NextDateInput,
  reports: readonly PerformanceReport[],
): ReadinessOptions {
  const soreness = Object.fromEntries(
    sore.map((one) => [muscleOf(one.muscle), one.soreness] as const),
  );
  return {
    status,
    reports: { soreness, shortNights },
    ...(reports.length > 0 && { habit: learnRecovery(reports) }),
  };
}
