import type { MuscleReadiness } from '@windlass/core/recovery';
import type { NoAnswer } from '../contract/Answer.ts';
import { HEALTH_NOT_ASKED } from '../shared/cautions.ts';
import type { NextDateInput } from './fields.ts';
import { Strip } from './Strip.tsx';
import { sourcesOf } from './sourcesOf.ts';
import { said } from './words.ts';

/** The next session trains nothing that this one did. */
export function nothingShared(
  { zone }: NextDateInput,
  start: string,
  muscles: readonly MuscleReadiness[],
): NoAnswer {
  return {
    kind: 'none',
    reason: 'nothing-shared',
    label: said.forNext,
    headline: said.anyTime,
    message: said.nothingShared,
    cautions: [HEALTH_NOT_ASKED],
    sources: sourcesOf(muscles),
    view: () => <Strip muscles={muscles} start={start} zone={zone} plannedIn={null} />,
  };
}
