import type { Exercise } from '@windlass/core/anatomy';
import {
  type ExpectedAndDone,
  expectedAgainstDone,
  type LiftSession,
  performedSets,
  setAsideTags,
} from '@windlass/core/progress';
import { dayNumber, muscleHours } from '@windlass/core/recovery';
import {
  enduranceCurves,
  generalCurve,
  type PerformedSet,
  priorFor,
  type SourcedRepCurve,
  type StrengthPosterior,
  strengthAfter,
  strengthFrom,
} from '@windlass/core/strength';
import { parseTempo, secondsPerRep } from '@windlass/core/tempo';
import type { ReviewLift } from '../precomputed/reviewLifts.ts';

/** What the sets of one lift say of the lifter. */
export interface Beliefs {
  readonly curve: SourcedRepCurve;
  readonly sets: readonly PerformedSet[];
  /** On the day of the next session. */
  readonly next: StrengthPosterior | undefined;
  /** The sets of the last session, each against what was believed before it. */
  readonly lastTime: readonly { readonly set: PerformedSet; readonly against: ExpectedAndDone }[];
  /** Of the last session, where its tempo was noted. */
  readonly paceSeconds: number | undefined;
  /** Hours that its slowest muscle asks for between such sessions. */
  readonly hoursNeeded: number | undefined;
}

/** One muscle stands for a lift whose muscles are not known. */
const UNKNOWN_LIFT: Pick<Exercise, 'direct' | 'indirect'> = { direct: { lats: 1 }, indirect: {} };

/** What is believed before the last session and before the next. */
export function beliefsOf(
  all: readonly LiftSession[],
  known: ReviewLift | undefined,
  on: string,
): Beliefs {
  const curve = known ? enduranceCurves[known.endurance] : generalCurve;
  const sessions = all.filter(({ tags }) => !tags.some((tag) => setAsideTags.includes(tag)));
  const sets = performedSets(sessions, { exercise: known ?? UNKNOWN_LIFT, curve });
  const last = sessions.at(-1);
  const isLast = ({ day }: PerformedSet) => day === last?.day;
  const today = dayNumber(on);
  const prior = priorFor(curve);
  const latest = sets.filter(isLast);
  const before = strengthFrom({
    sets: sets.filter((set) => !isLast(set)),
    prior,
    today: last?.day ?? today,
  });
  const next =
    before.kind === 'posterior'
      ? strengthAfter(before, { sets: latest, today })
      : strengthFrom({ sets: latest, prior, today });
  return {
    curve,
    sets,
    next: next.kind === 'posterior' ? next : undefined,
    lastTime:
      before.kind === 'posterior'
        ? latest.map((set) => ({ set, against: expectedAgainstDone(before, set) }))
        : [],
    paceSeconds: paceOf(last),
    hoursNeeded: last && known && slowest(last, known),
  };
}

function paceOf(session: LiftSession | undefined): number | undefined {
  const tempo = session?.sets[0].tempo;
  const read = tempo === undefined ? undefined : parseTempo(tempo);
  return read?.ok ? secondsPerRep(read.value.tempo) : undefined;
}

function slowest({ sets }: LiftSession, exercise: ReviewLift): number {
  const hours = muscleHours([{ exercise, sets: Math.min(100, sets.length) }]);
  return Math.max(0, ...Object.values(hours));
}
