import type { CalendarRequest, NoCalendar } from '@windlass/core/recovery';
import type { NoAnswer } from '../contract/Answer.ts';
import { formatWall } from '../ui/formatDate.ts';
import { ChangesPanel } from './ChangesPanel.tsx';
import { muscleList, nameOfSession } from './names.ts';
import { ObstacleList } from './ObstacleList.tsx';
import { said } from './words.ts';

/** Nothing fits, or the fixed sessions are in each other's way: why, and what would help. */
export function noCalendar(request: CalendarRequest, plan: NoCalendar): NoAnswer {
  const isFixed = plan.kind === 'fixed-sessions-conflict';
  return {
    kind: 'none',
    reason: plan.kind,
    headline: isFixed ? said.fixedConflict : said.nothingFits,
    message: isFixed ? said.fixedConflictSays : said.nothingFitsSays,
    view: () =>
      isFixed ? (
        <ul class="wl-sources">
          {plan.conflicts.map(({ session, start, gaps, earliest }) => (
            <li key={start}>
              {said.conflict(
                nameOfSession(request, session),
                formatWall(start),
                muscleList(gaps.map(({ muscle }) => muscle)),
                formatWall(earliest),
              )}
            </li>
          ))}
          {plan.conflicts.length === 0 && <li>{said.conflictOther}</li>}
        </ul>
      ) : (
        <ObstacleList request={request} shortfalls={plan.shortfalls} />
      ),
    details: () => (isFixed ? null : <ChangesPanel request={request} />),
  };
}
