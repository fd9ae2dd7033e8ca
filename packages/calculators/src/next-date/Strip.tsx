import { elapsedTime, type MuscleReadiness, wallTimeAfter } from '@windlass/core/recovery';
import { formatDay } from '../ui/formatDate.ts';
import { ReadinessStrip } from '../ui/ReadinessStrip.tsx';
import { muscleName } from './muscleName.ts';
import { whenWords } from './whenWords.ts';
import { said } from './words.ts';

interface StripProps {
  /** The last to be ready first. */
  readonly muscles: readonly MuscleReadiness[];
  readonly start: string;
  readonly zone: string;
  /** Hours to a planned start. */
  readonly plannedIn: number | null;
}

const MOST_DAYS = 400;

/** The muscles over the days after the session. */
export function Strip({ muscles, start, zone, plannedIn }: StripProps) {
  const when = (hours: number) => whenWords(start, hours, zone);
  const rows = muscles.map(({ muscle, readyIn }) => ({
    name: muscleName(muscle),
    ...readyIn,
    when: when(readyIn.likely),
  }));
  const words = rows.map(({ name, earliest, likely, cautious }) =>
    said.muscleWhen(name, when(earliest), when(likely), when(cautious)),
  );
  const longest = Math.max(...rows.map(({ cautious }) => cautious));
  return (
    <>
      <p class="wl-pieces-label">{said.stripLabel(plannedIn !== null)}</p>
      <ReadinessStrip
        rows={rows}
        days={midnights(start, longest, zone)}
        planned={plannedIn}
        says={said.strip(words)}
      />
    </>
  );
}

/** The midnights after a start, in elapsed hours, as far as they matter. */
function midnights(start: string, hours: number, zone: string) {
  const count = Math.min(MOST_DAYS, Math.ceil(Math.max(48, hours) / 24) + 1);
  return Array.from({ length: count }, (_, place) => {
    const date = dateAfter(start.slice(0, 10), place + 1);
    return { at: elapsedTime(start, `${date}T00:00`, zone).hours, name: formatDay(date) };
  });
}

function dateAfter(date: string, days: number): string {
  return wallTimeAfter(`${date}T12:00`, 24 * days, 'UTC').slice(0, 10);
}
