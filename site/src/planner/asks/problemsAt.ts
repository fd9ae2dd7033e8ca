import type { Problem } from '@windlass/core/basis';
import type { Path } from '../state/tree.ts';

/** The problems of a field: at its place or inside it. */
export function problemsAt(problems: readonly Problem[], path: Path): readonly Problem[] {
  return problems.filter((problem) => path.every((step, place) => problem.path[place] === step));
}

/** The id of the element that asks for a field. */
export function idOf(path: Path): string {
  return `ask-${path.join('-')}`;
}
