const MOST_STAGES = 3;
const MOST_LEFT = 4;

/** How the sets of a row ended: repetitions left, 0 for failure, or stages past it. */
export interface WorkEnd {
  readonly left: number;
  readonly stages: number;
}

/** A row of familiar work for the calculator of the next date. */
export function workText(exercise: string, sets: number, { left, stages }: WorkEnd): string {
  const past = Math.min(MOST_STAGES, stages);
  const end = past === 0 ? Math.min(MOST_LEFT, Math.max(0, Math.round(left))) : `past${past}`;
  return [exercise, Math.min(20, Math.max(1, sets)), end, 'lifted', 'used'].join('_');
}
