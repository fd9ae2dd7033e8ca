import { LiftResult } from './sheet/LiftResult.tsx';
import { rulerEnd } from './sheet/rulerEnd.ts';
import type { Planned } from './state/planFrom.ts';

interface ChosenLiftsProps {
  /** How many lifts the draft names itself. */
  readonly named: number;
  readonly shown: Planned;
}

/** The lifts that were chosen for muscles: they follow those that are named. */
export function ChosenLifts({ named, shown }: ChosenLiftsProps) {
  const { plan } = shown;
  const { lifts } = shown.question.intent;
  if (plan.kind !== 'session') return null;
  const chosen = plan.lifts.slice(lifts.length);
  return chosen.map((lift, at) => (
    <section class="leaf" key={at}>
      <div class="leaf-sheet">
        <LiftResult
          shown={shown}
          place={lifts.length + at}
          number={named + at + 1}
          exercise={lift.kind === 'left-out' ? lift.intent.exercise : lift.lift.exercise.id}
          most={rulerEnd(plan)}
        />
      </div>
    </section>
  ));
}
