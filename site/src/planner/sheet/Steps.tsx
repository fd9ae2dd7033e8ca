import type { PlannedLift, SheetLift } from '@windlass/core/session';
import { words } from '../words.ts';
import { WarmUpStep } from './WarmUpStep.tsx';
import { WorkStep } from './WorkStep.tsx';

interface StepsProps {
  readonly plan: PlannedLift;
  readonly sheet: SheetLift;
  readonly most: number;
}

/** Everything that is done in a lift, in order: warm-up sets, then work sets. */
export function Steps({ plan, sheet, most }: StepsProps) {
  const ramp = plan.warmUp.kind === 'ramp' ? plan.warmUp.steps : [];
  return (
    <ol class="steps">
      {ramp.map((step, place) => {
        const said = sheet.warmUp[place];
        return said && <WarmUpStep key={place} number={place + 1} sheet={said} step={step} />;
      })}
      {sheet.warmUpNote !== '' && (
        <li class="step">
          <p class="step-name">{words.lift.warmUp}</p>
          <p class="step-hands step-whole">{sheet.warmUpNote}</p>
        </li>
      )}
      {sheet.sets.map((set, place) => (
        <WorkStep
          key={place}
          number={place + 1}
          set={set}
          lift={sheet}
          isOneSided={plan.lift.exercise.sides === 'one'}
          most={most}
        />
      ))}
    </ol>
  );
}
