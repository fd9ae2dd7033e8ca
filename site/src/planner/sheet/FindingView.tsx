import { formatLoad, type Unit } from '@windlass/core/load';
import type { FindingLift, SheetFinding } from '@windlass/core/session';
import { findingRules } from '@windlass/core/strength';
import type { ComponentChildren } from 'preact';
import { words } from '../words.ts';
import { LiftHead } from './LiftHead.tsx';
import { LoadView } from './LoadView.tsx';
import { WriteIn } from './WriteIn.tsx';
import { windowWords } from './windowWords.ts';

interface FindingViewProps {
  readonly number: number;
  readonly plan: FindingLift;
  readonly sheet: SheetFinding;
  readonly unit: Unit;
}

/** A lift without history: the first trial set, and how to go on from what was left. */
export function FindingView({ number, plan, sheet, unit }: FindingViewProps) {
  return (
    <article class="lift">
      <LiftHead number={number} name={sheet.name} on={sheet.equipment} />
      <LoadView
        load={sheet.firstLoad}
        choice={plan.firstTry}
        lift={plan.lift}
        before={words.lift.start}
      />
      <p class="lift-rep">
        <strong>
          {words.lift.find(windowWords(sheet.window))}: {sheet.count}.
        </strong>{' '}
        {[...(sheet.chosenFor ?? []), ...sheet.notes, ...sheet.fixed, ...sheet.refused].join(' ')}
      </p>
      <ol class="steps">
        <TryStep name={`${words.lift.try} 1`} plan={plan}>
          {sheet.firstLoad.words}
        </TryStep>
        {plan.mostTries > 1 && (
          <TryStep
            name={words.lift.tries(2, plan.mostTries)}
            plan={plan}
            times={plan.mostTries - 1}
          >
            {words.lift.nextTry}
          </TryStep>
        )}
      </ol>
      <NextLoads plan={plan} unit={unit} />
    </article>
  );
}

interface TryStepProps {
  readonly name: string;
  readonly plan: FindingLift;
  readonly times?: number;
  readonly children: ComponentChildren;
}

function TryStep({ name, plan, times = 1, children }: TryStepProps) {
  return (
    <li class="step step-work">
      <p class="step-name">{name}</p>
      <p class="step-do">
        <span class="step-number">{plan.reps}</span> <small>{words.lift.repsUnit(plan.reps)}</small>
      </p>
      <div class="step-hands">
        <div>
          <p>{children}</p>
          <p class="step-loading">{words.lift.stopWith(plan.stopWithLeft)}</p>
        </div>
        <div>
          {Array.from({ length: times }, (_, place) => (
            <WriteIn key={place} />
          ))}
        </div>
      </div>
    </li>
  );
}

/** After the first try: the heaviest load that may follow, by how many repetitions were left. */
function NextLoads({ plan, unit }: Pick<FindingViewProps, 'plan' | 'unit'>) {
  const { firstTry, lift } = plan;
  const rows = findingRules.steps.map(({ fromLeft, factor }, place) => {
    const above = findingRules.steps[place - 1]?.fromLeft;
    const most = lift.loads.loads.findLast(({ load }) => load <= firstTry.load * factor);
    return {
      left: words.lift.stepLeft(fromLeft, above === undefined ? undefined : above - 1),
      load: formatLoad((most ?? firstTry).shown, { unit }),
    };
  });
  return (
    <table class="next-loads">
      <caption>{words.lift.steps}</caption>
      <tbody>
        {rows.toReversed().map(({ left, load }) => (
          <tr key={left}>
            <th scope="row">{left}</th>
            <td>{load}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
