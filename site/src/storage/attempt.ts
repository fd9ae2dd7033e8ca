import { type Failure, failureOf } from './Failure.ts';

/** What was asked of the database, or why it did not do it. */
export async function attempt<Result>(run: () => Promise<Result>): Promise<Result | Failure> {
  try {
    return await run();
  } catch (error) {
    return failureOf(error);
  }
}
