import { exerciseName } from '../asks/exerciseName.ts';
import type { Planned } from '../state/planFrom.ts';
import { words } from '../words.ts';
import { FindingView } from './FindingView.tsx';
import { LeftOutView } from './LeftOutView.tsx';
import { LiftHead } from './LiftHead.tsx';
import { PlannedView } from './PlannedView.tsx';

/** What stands in place of a lift that has no result. */
const noLoad = {
  session: words.lift.none,
  'ask-first': words.lift.askFirst,
  'too-short': words.tooShort.lift,
} as const;

interface LiftResultProps {
  readonly shown: Planned;
  /** Place in the plan that is shown, or -1 where the lift is not in it yet. */
  readonly place: number;
  /** Place in the draft, and the exercise that is wanted there. */
  readonly number: number;
  readonly exercise: string;
  readonly most: number;
}

/** What became of one lift that was wanted. */
export function LiftResult({ shown, place, number, exercise, most }: LiftResultProps) {
  const { plan, sheet } = shown;
  const lift = plan.kind === 'session' ? plan.lifts[place] : undefined;
  const sheetLift = sheet.kind === 'sheet' ? sheet.lifts[place] : undefined;
  if (lift?.kind === 'planned' && sheetLift?.kind === 'planned') {
    return <PlannedView number={number} plan={lift} sheet={sheetLift} most={most} />;
  }
  if (lift?.kind === 'finding' && sheetLift?.kind === 'finding' && plan.kind === 'session') {
    return <FindingView number={number} plan={lift} sheet={sheetLift} unit={plan.unit} />;
  }
  const name = exerciseName(exercise);
  if (lift?.kind === 'left-out' && sheetLift?.kind === 'left-out') {
    return <LeftOutView number={number} name={name} plan={lift} sheet={sheetLift} />;
  }
  return (
    <article class="lift">
      <LiftHead number={number} name={name} />
      <p class="soft">{noLoad[plan.kind]}</p>
    </article>
  );
}
