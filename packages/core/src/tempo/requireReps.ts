/** Stops a programmer's mistake: a number of repetitions that is not a whole one from 0 to 1000. */
export function requireReps(where: string, reps: number): void {
  if (Number.isInteger(reps) && reps >= 0 && reps <= 1000) return;
  throw new RangeError(`${where}: reps must be a whole number from 0 to 1000, got ${reps}`);
}
