import { sideGap, stallCauses, stallCheck, topSets } from '@windlass/core/progress';
import type { LogReviewResult } from './compute.ts';
import type { LogReviewInput } from './fields.ts';
import { said } from './words.ts';

interface StallPanelProps {
  readonly input: LogReviewInput;
  readonly result: LogReviewResult;
}

/** Whether the lift stands still, as a probability, and what may hold it back, each with its test. */
export function StallPanel({ input: { window }, result: { question, beliefs } }: StallPanelProps) {
  const { sessions, hoursNeeded } = question;
  const last = sessions.at(-1);
  if (last === undefined) return null;
  const target = { sets: topSets(last).sets.length, reps: window.low };
  const stall = stallCheck({ sessions, target, curve: beliefs.curve });
  const isStill = stall.kind === 'stall';
  const causes = isStill
    ? stallCauses({ sessions, ...(hoursNeeded === undefined ? {} : { hoursNeeded }) })
    : [];
  const sides = sideGap(sessions, beliefs.curve);
  return (
    <section class="wl-panel">
      <h2 class="wl-heading">{said.stall}</h2>
      <p>{stall.says}</p>
      {causes.length > 0 && (
        <ul class="wl-options">
          {causes.map(({ id, standing, says, test, source }) => (
            <li key={id}>
              <strong>{said.standingOf[standing]}</strong> {says}
              <span class="wl-row-note">{said.test(test)}</span>
              {source && <cite class="wl-cite">{source.citation}.</cite>}
            </li>
          ))}
        </ul>
      )}
      <p class="wl-soft">{said.stallNote(target.sets, target.reps)}</p>
      {sides.kind === 'gap' && <p>{said.sides(sides.says)}</p>}
    </section>
  );
}
