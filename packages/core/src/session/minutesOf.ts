import type { SessionMinutes, TimelineItem } from './SessionPlan.ts';

/** The length of a session by its parts, in minutes. */
export function minutesOf(timeline: readonly TimelineItem[]): SessionMinutes {
  const of = (kind: TimelineItem['kind']) =>
    timeline.filter((item) => item.kind === kind).reduce((sum, { seconds }) => sum + seconds, 0) /
    60;
  const parts = { change: of('change'), warmUp: of('warm-up'), work: of('work'), rest: of('rest') };
  return { ...parts, total: parts.change + parts.warmUp + parts.work + parts.rest };
}
