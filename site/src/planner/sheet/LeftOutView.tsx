import type { LeftOutLift, SheetLeftOut } from '@windlass/core/session';
import { words } from '../words.ts';
import { LiftHead } from './LiftHead.tsx';

interface LeftOutViewProps {
  readonly number: number;
  readonly name: string;
  readonly plan: LeftOutLift;
  readonly sheet: SheetLeftOut;
}

/** A lift that is not done: why, and what would help. */
export function LeftOutView({ number, name, plan, sheet }: LeftOutViewProps) {
  return (
    <article class="lift lift-out">
      <LiftHead number={number} name={name} />
      <p class="lift-out-mark">{words.lift.leftOut}</p>
      <p>{sheet.reason}</p>
      {sheet.exchanges.length > 0 && (
        <>
          <p>{words.lift.instead}</p>
          <ul>
            {sheet.exchanges.map(({ name: other, equipment, reasons }) => (
              <li key={`${other} ${equipment}`}>
                {other} ({equipment}). {reasons.join(' ')}
              </li>
            ))}
          </ul>
        </>
      )}
      <p class="soft">{words.leftOut[plan.reason]}</p>
    </article>
  );
}
