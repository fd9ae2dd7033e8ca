import highsLoader from 'highs';
import { calendarProgram, type MipQuestion } from './calendarProgram.ts';

/** The largest number of sessions by a general mixed-integer solver. */
export async function mostSessionsByMip(question: MipQuestion): Promise<number> {
  const highs = await highsLoader();
  return Math.round(highs.solve(calendarProgram(question)).ObjectiveValue);
}
