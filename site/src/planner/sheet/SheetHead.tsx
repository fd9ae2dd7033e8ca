import type { Caution } from '@windlass/core/safety';
import type { SessionPlan } from '@windlass/core/session';
import { words } from '../words.ts';
import { AskFirst } from './AskFirst.tsx';
import { cautionCounts } from './cautionCounts.ts';
import { cautionShapes, gravestFirst } from './cautionOrder.ts';
import { dayWords } from './dayWords.ts';
import { LeftOutForTime } from './LeftOutForTime.tsx';
import { SessionMinutes } from './SessionMinutes.tsx';
import { TooLittleTime } from './TooLittleTime.tsx';

interface SheetHeadProps {
  readonly plan: SessionPlan;
  readonly gymName: string;
}

/** Who, when and where, how long, and that there are cautions. */
export function SheetHead({ plan, gymName }: SheetHeadProps) {
  return (
    <header class="sheet-head">
      <div class="sheet-who">
        <p class="sheet-name">{plan.clientName}</p>
        <p class="sheet-when">
          {dayWords(plan.date)}, {words.head.at(gymName)}
        </p>
      </div>
      {plan.kind === 'session' && <SessionMinutes plan={plan} />}
      {plan.kind === 'session' && plan.refused.length > 0 && (
        <ul class="soft">
          {plan.refused.map(({ message }) => (
            <li key={message}>{message}</li>
          ))}
        </ul>
      )}
      {plan.kind === 'session' && plan.limit && <LeftOutForTime limit={plan.limit} />}
      {plan.kind === 'ask-first' && <AskFirst plan={plan} />}
      {plan.kind === 'too-short' && <TooLittleTime message={plan.message} />}
      <CautionCount cautions={plan.cautions} />
    </header>
  );
}

/** The cautions in a line each, where there is room for them; else how many. */
function CautionCount({ cautions }: { readonly cautions: readonly Caution[] }) {
  const ordered = gravestFirst(cautions);
  const [gravest] = ordered;
  if (gravest === undefined) return null;
  return (
    <nav class="sheet-cautions" aria-label={words.cautions.title}>
      <a href="#cautions" class="sheet-count" data-level={gravest.level}>
        <span aria-hidden="true">{cautionShapes[gravest.level]}</span>
        {words.head.cautions(cautionCounts(cautions))}
      </a>
      <ul>
        {ordered.map(({ id, level, what }) => (
          <li key={id}>
            <a href={`#caution-${id}`} data-level={level}>
              <span aria-hidden="true">{cautionShapes[level]}</span>
              {what}
            </a>
          </li>
        ))}
      </ul>
    </nav>
  );
}
