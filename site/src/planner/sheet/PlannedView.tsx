import type { PlannedLift, SheetLift } from '@windlass/core/session';
import { words } from '../words.ts';
import { LiftHead } from './LiftHead.tsx';
import { LoadView } from './LoadView.tsx';
import { numberAndUnit } from './numberAndUnit.ts';
import { PastFailure } from './PastFailure.tsx';
import { Steps } from './Steps.tsx';
import { Why } from './Why.tsx';
import { windowWords } from './windowWords.ts';

interface PlannedViewProps {
  readonly number: number;
  readonly plan: PlannedLift;
  readonly sheet: SheetLift;
  readonly most: number;
}

/** A lift with its load. */
export function PlannedView({ number, plan, sheet, most }: PlannedViewProps) {
  const { mark, number: value, unit } = numberAndUnit(sheet.load.words);
  const window = windowWords(sheet.window);
  const [ending, ...notes] = sheet.notes;
  const reasons = [
    ...(sheet.chosenFor ?? []),
    ...sheet.refused,
    ...(sheet.join?.notes ?? []),
    ...notes,
  ];
  return (
    <article class="lift">
      <LiftHead number={number} name={sheet.name} on={sheet.equipment} />
      <LoadView load={sheet.load} choice={plan.work.choice} lift={plan.lift} />
      <p class="lift-rep">
        <strong>
          {plan.repsInReserve === 0 ? words.lift.fail(window) : words.lift.end(window)}
          {': '}
          {sheet.count}.
        </strong>{' '}
        {ending}
      </p>
      {sheet.fixed.length > 0 && (
        <p class="lift-fixed">
          <strong>{words.lift.fixed}</strong> {sheet.fixed.join(' ')}
        </p>
      )}
      <Steps plan={plan} sheet={sheet} most={most} />
      {sheet.chain && <PastFailure chain={sheet.chain} />}
      <Why load={`${mark}${value} ${unit}`} reasons={reasons} />
    </article>
  );
}
