import {
  calendarEntries,
  calendarFile,
  type PlacedSession,
  type PlannedCalendar,
} from '@windlass/core/recovery';
import { useEffect, useState } from 'preact/hooks';
import { saveFile } from '../ui/saveFile.ts';
import type { CalendarInput } from './fields.ts';
import { planIdOf } from './planIdOf.ts';
import { said } from './words.ts';

interface FilePanelProps {
  readonly input: CalendarInput;
  readonly plan: PlannedCalendar;
}

/** The plan for a calendar application. The button comes with the script that it needs. */
export function FilePanel({ input, plan }: FilePanelProps) {
  const [isAlive, setAlive] = useState(false);
  useEffect(() => setAlive(true), []);
  const save = () => {
    const planId = planIdOf(input.name);
    const file = calendarFile({
      entries: calendarEntries({ planId, sessions: plan.sessions }),
      zone: input.zone,
      stampedAt: new Date().toISOString(),
      ...(input.name === '' ? {} : { name: input.name }),
      describe: (session) => describe(input, session),
    });
    saveFile(said.fileName(planId), file, 'text/calendar;charset=utf-8');
  };
  return (
    <section class="wl-panel wl-no-print">
      <h2 class="wl-heading">{said.file}</h2>
      <div class="wl-actions wl-save-place" data-wakes>
        {isAlive && (
          <button type="button" class="wl-button" onClick={save}>
            {said.save}
          </button>
        )}
      </div>
      <p class="wl-soft">{said.fileNote}</p>
    </section>
  );
}

function describe({ sessions }: CalendarInput, { session, name, light }: PlacedSession): string {
  const row = sessions[Number(session) - 1];
  if (row === undefined) return '';
  if (light) return said.describeLight;
  return said.describe(name, row.sets, said.ends[row.end]);
}
