import type { CalendarModel } from './CalendarModel.ts';
import type { Label } from './Label.ts';
import type { Start } from './Start.ts';

/**
 * A number of sessions that surely cannot be exceeded after a label, from three simplified
 * problems: the shortest pause between any two sessions, the shortest pause of a session with
 * itself, and the room that the weeks leave.
 */
export function upperBounds(model: CalendarModel): (label: Label) => number {
  const { starts, forms, perWeek } = model;
  const pauses = forms.flatMap((pair) => pair.map(({ holdsBack }) => holdsBack));
  const between = Math.min(...pauses.flat());
  const same = Math.min(
    ...forms.flatMap((pair, s) => pair.map((form) => form.holdsBack[s] as number)),
  );
  const anyTwo = chainLengths(model, between);
  const itself = chainLengths(model, same);
  const freeDays = new Map<number, number[]>();
  for (const { week, day } of starts) {
    const days = freeDays.get(week) ?? [];
    if (days.at(-1) !== day) days.push(day);
    freeDays.set(week, days);
  }
  const weeks = [...freeDays.keys()].sort((a, b) => b - a);
  const fromWeek = new Map<number, number>();
  let room = 0;
  for (const week of weeks) {
    fromWeek.set(week, room);
    room += Math.min(perWeek, (freeDays.get(week) as number[]).length);
  }
  const nextDay = starts.map(({ day }) => starts.findIndex((other) => other.day > day));
  return (label) => {
    const daysLeft = (freeDays.get(label.week) as number[]).filter((day) => day > label.day).length;
    const thisWeek = Math.min(daysLeft, perWeek - label.inWeek);
    const next = nextDay[label.start] as number;
    const ofEach = next < 0 ? 0 : 1 + (itself[next] as number);
    return Math.min(
      anyTwo[label.start] as number,
      forms.length * ofEach,
      thisWeek + (fromWeek.get(label.week) as number),
    );
  };
}

/** For each start, how many sessions with a pause can follow it, one a day; by the earliest each time. */
function chainLengths({ starts }: CalendarModel, pause: number): readonly number[] {
  const lengths: number[] = new Array(starts.length).fill(0);
  for (let index = starts.length - 1; index >= 0; index -= 1) {
    const { at, day } = starts[index] as Start;
    let next = index + 1;
    while (next < starts.length && !isAfter(starts[next] as Start, at + pause, day)) next += 1;
    lengths[index] = next < starts.length ? 1 + (lengths[next] as number) : 0;
  }
  return lengths;
}

function isAfter(start: Start, at: number, day: number): boolean {
  return start.at >= at && start.day > day;
}
