import type { LiftPlan } from '../LiftPlan.ts';
import type { TimelineItem } from '../SessionPlan.ts';
import type { LiftPieces } from './LiftPieces.ts';

/** The parts of a session that a time limit may take, with their seconds on its timeline. */
export function piecesOf(
  lifts: readonly LiftPlan[],
  timeline: readonly TimelineItem[],
): readonly LiftPieces[] {
  const first = lifts.findIndex(({ kind }) => kind !== 'left-out');
  return lifts.flatMap((plan, lift): LiftPieces[] => {
    if (plan.kind === 'left-out') return [];
    const { exercise, intent } = plan.lift;
    const items = timeline.filter((item) => item.lift === lift);
    const whole = items.reduce((sum, { seconds }) => sum + seconds, 0);
    const of = (kind: TimelineItem['kind'], step: number) =>
      items
        .filter((item) => item.kind === kind && item.step === step)
        .reduce((sum, { seconds }) => sum + seconds, 0);
    const chainSeconds = plan.kind === 'planned' ? (plan.chain?.addedSeconds ?? 0) : 0;
    const isFree = plan.kind === 'planned' && intent.overrules?.sets === undefined;
    const furtherSets = isFree
      ? plan.sets.slice(1).map((_, at) => {
          const past = at + 2 === plan.sets.length ? chainSeconds : 0;
          return of('rest', at) + of('work', at + 1) - past;
        })
      : [];
    const light = lift === first ? 0 : lightSteps(plan);
    const steps = Array.from({ length: light }, (_, step) => of('warm-up', step));
    const droppable = [...furtherSets, ...steps, chainSeconds].reduce(
      (sum, seconds) => sum + seconds,
      0,
    );
    return [
      {
        lift,
        exercise,
        leanSeconds: whole - droppable,
        leanSets: isFree ? 1 : intent.sets,
        furtherSets,
        chainSeconds,
        lightSteps: steps,
        stays: intent.overrules !== undefined && Object.keys(intent.overrules).length > 0,
      },
    ];
  });
}

/** How many of the first warm-up sets are only there to warm the body; one set always stays. */
function lightSteps(plan: Exclude<LiftPlan, { kind: 'left-out' }>): number {
  if (plan.kind !== 'planned' || plan.warmUp.kind !== 'ramp') return 0;
  if (plan.lift.intent.overrules?.warmUp !== undefined) return 0;
  const { steps } = plan.warmUp;
  const light = steps.filter(({ purpose }) => purpose === 'circulation').length;
  return Math.min(light, steps.length - 1);
}
