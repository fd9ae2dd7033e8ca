import { fittedRepGroups } from './fittedRepGroups.ts';
import { foretoldRepGroups } from './foretoldRepGroups.ts';
import type { RepGroup } from './RepGroup.ts';

/** Every published group, those that the starting curves were made from marked as fitted. */
export function repGroups(): readonly (RepGroup & { readonly fitted?: true })[] {
  return [
    ...fittedRepGroups().map((group) => ({ ...group, fitted: true as const })),
    ...foretoldRepGroups(),
  ];
}
