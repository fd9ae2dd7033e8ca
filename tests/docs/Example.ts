/** A piece of documentation that is code to run. */
export interface Example {
  /** Relative to the root of the repository. */
  readonly file: string;
  /** Line on which the code starts, from 1. */
  readonly line: number;
  readonly code: string;
}
