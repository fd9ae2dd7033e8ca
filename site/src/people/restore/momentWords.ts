import { dateWords } from '../../planner/sheet/dateWords.ts';

/** `15 March 2027, 18:30` in the time of this device; the text itself where it is no moment. */
export function momentWords(moment: string): string {
  const date = new Date(moment);
  if (Number.isNaN(date.getTime())) return moment;
  const two = (number: number) => String(number).padStart(2, '0');
  const day = `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
  return `${dateWords(day)}, ${two(date.getHours())}:${two(date.getMinutes())}`;
}
