import { MusclesAsk } from './foldedParts.ts';
import { Leaf } from './Leaf.tsx';
import { LiftResult } from './sheet/LiftResult.tsx';
import { rulerEnd } from './sheet/rulerEnd.ts';
import type { Planned } from './state/planFrom.ts';
import { words } from './words.ts';

interface MusclesLeafProps {
  /** How many lifts the draft names itself; the chosen ones follow them. */
  readonly named: number;
  readonly shown: Planned;
}

/** The muscles that lifts are chosen for, and the lifts that were. */
export function MusclesLeaf({ named, shown }: MusclesLeafProps) {
  const { plan, question } = shown;
  const first = question.intent.lifts.length;
  const all = plan.kind === 'session' ? plan.lifts : [];
  const chosen = all
    .slice(first)
    .map((lift) => (lift.kind === 'left-out' ? lift.intent : lift.lift.intent));
  return (
    <Leaf
      name={words.muscles.title}
      button={words.actions.change}
      brief={words.muscles.chosen(chosen.length)}
      sheet={
        <div class="chosen">
          {chosen.map(({ exercise }, place) => (
            <LiftResult
              key={exercise}
              shown={shown}
              place={first + place}
              number={named + place + 1}
              exercise={exercise}
              most={rulerEnd(plan)}
            />
          ))}
          {plan.kind === 'session' && chosen.length === 0 && (
            <p class="soft">{words.muscles.none}</p>
          )}
        </div>
      }
      asks={<MusclesAsk chosen={chosen} />}
    />
  );
}
