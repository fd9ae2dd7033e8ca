import type { Problem } from '@windlass/core/basis';

/** What would be right instead, for one field: `path` is the row and column inside it, or empty. */
export type FieldProblem = Problem;

/** One problem as a bad outcome. */
export function refuse(
  code: string,
  message: string,
  received: string,
): { readonly ok: false; readonly problems: readonly FieldProblem[] } {
  return { ok: false, problems: [{ code: `calculators.${code}`, path: [], message, received }] };
}
