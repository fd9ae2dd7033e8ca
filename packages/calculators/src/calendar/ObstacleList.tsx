import type { CalendarRequest, Obstacle, Shortfall } from '@windlass/core/recovery';
import { formatDate, formatWall } from '../ui/formatDate.ts';
import { nameOfSession } from './names.ts';
import { said } from './words.ts';

interface ObstacleListProps {
  readonly request: CalendarRequest;
  readonly shortfalls: readonly Shortfall[];
}

/** More days than these are counted, not listed. */
const MOST_DAYS = 7;

/** Week by week what kept the days free of a session. */
export function ObstacleList({ request, shortfalls }: ObstacleListProps) {
  return (
    <>
      {shortfalls.map(({ from, asked, placed, obstacles }) => (
        <div key={from}>
          <p>
            <strong>{said.weekShort(formatDate(from), placed, asked)}</strong>
          </p>
          <ul class="wl-sources">
            {obstacles.slice(0, MOST_DAYS).map((obstacle) => (
              <li key={obstacle.date}>{obstacleWords(request, obstacle)}</li>
            ))}
            {obstacles.length > MOST_DAYS && <li>{said.moreDays(obstacles.length - MOST_DAYS)}</li>}
          </ul>
        </div>
      ))}
    </>
  );
}

function obstacleWords(
  request: CalendarRequest,
  { date, session, reason, readyAt }: Obstacle,
): string {
  const name = nameOfSession(request, session);
  const day = formatDate(date);
  return reason === 'not-ready' && readyAt !== undefined
    ? said.notReadyUntil(day, name, formatWall(readyAt))
    : said.obstacle(day, said.obstacles[reason](name));
}
