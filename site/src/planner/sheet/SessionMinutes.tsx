import type { SessionMinutes as Minutes, PlannedSession } from '@windlass/core/session';
import { words } from '../words.ts';
import { TimeStrip } from './TimeStrip.tsx';

const parts = ['change', 'warmUp', 'work', 'rest'] as const satisfies (keyof Minutes)[];

/** How long the session takes: the whole large, its parts with the mark that each has on the strip. */
export function SessionMinutes({ plan }: { readonly plan: PlannedSession }) {
  const { minutes } = plan;
  const total = String(Math.round(minutes.total));
  const said = parts.map((part) => `${words.head.parts[part]} ${Math.round(minutes[part])}`);
  return (
    <div class="minutes">
      <p class="minutes-total">
        <span class="visually-hidden">{words.head.about} </span>
        {total} <small>{words.head.minutes}</small>
      </p>
      <TimeStrip plan={plan} says={words.head.strip(total, said.join(', '))} />
      <dl class="minutes-parts">
        {parts.map((part) => (
          <div key={part}>
            <dt>
              <svg class="minutes-mark" width="14" height="14" aria-hidden="true">
                <Mark part={part} />
              </svg>
              {words.head.parts[part]}
            </dt>
            <dd>{Math.round(minutes[part])}</dd>
          </div>
        ))}
      </dl>
    </div>
  );
}

function Mark({ part }: { readonly part: (typeof parts)[number] }) {
  if (part === 'work') return <rect class="strip-block" data-kind="work" width="14" height="14" />;
  if (part === 'warmUp') {
    return <rect class="strip-block" data-kind="warm-up" x="1" y="6" width="12" height="7" />;
  }
  return <line class="strip-line" data-kind={part} x1="0" x2="14" y1="12" y2="12" />;
}
