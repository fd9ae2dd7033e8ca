import { wallTimeAfter } from '@windlass/core/recovery';
import { formatWall } from '../ui/formatDate.ts';

/** So many hours after a start, to the full hour above: a forecast is not known to minutes. */
export function whenWords(start: string, hours: number, zone: string): string {
  const [date = '', time = ''] = wallTimeAfter(start, hours, zone).split('T');
  const isFull = time.endsWith(':00');
  return formatWall(isFull ? `${date}T${time}` : nextFullHour(`${date}T${time}`, zone));
}

function nextFullHour(wall: string, zone: string): string {
  const minutes = Number(wall.slice(14));
  return wallTimeAfter(wall, (60 - minutes) / 60, zone);
}
