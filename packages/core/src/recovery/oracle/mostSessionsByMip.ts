import highsLoader from 'highs';
import { calendarProgram, type MipQuestion } from './calendarProgram.ts';

const loading = highsLoader();

/** The largest number of sessions by a general mixed-integer solver. */
export async function mostSessionsByMip(question: MipQuestion): Promise<number> {
  const highs = await loading;
  return Math.round(highs.solve(calendarProgram(question)).ObjectiveValue);
}
