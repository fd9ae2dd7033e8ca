import type { Band } from '@windlass/core/basis';
import { type Load, loadFromValue } from '@windlass/core/load';
import {
  oneRepMaxKg,
  type PerformedSet,
  priorFor,
  type SetContribution,
  type SourcedRepCurve,
  type StrengthPosterior,
  setContributions,
  strengthFrom,
} from '@windlass/core/strength';
import type { Computed } from '../contract/Definition.ts';
import { curveOf } from '../shared/liftField.ts';
import type { StrengthInput } from './fields.ts';
import { setsOf } from './setsOf.ts';
import { said } from './words.ts';

export interface StrengthResult {
  readonly sets: readonly PerformedSet[];
  readonly curve: SourcedRepCurve;
  readonly belief: StrengthPosterior;
  /** Everything that moves in the one repetition, in kg. */
  readonly max: Band;
  /** What each set told, in the order of the sets. */
  readonly told: readonly SetContribution[];
  /** The latest body weight; `null` where a weight alone is lifted. */
  readonly body: Load | null;
}

/** What the sets say together about strength and endurance on the lift. */
export function computeStrength(input: StrengthInput): Computed<StrengthResult> {
  const sets = setsOf(input);
  if ('kind' in sets) return sets;
  const curve = curveOf(input.lift);
  const evidence = { sets, prior: priorFor(curve), today: 0 };
  const belief = strengthFrom(evidence);
  if (belief.kind === 'nothing-known') {
    return { kind: 'none', reason: belief.kind, headline: said.nothing, message: said.noSet };
  }
  return {
    kind: 'result',
    result: {
      sets,
      curve,
      belief,
      max: oneRepMaxKg(belief),
      told: setContributions(evidence),
      body: input.lifted === 'weight' ? null : latestBody(input),
    },
  };
}

function latestBody({ sets }: StrengthInput): Load {
  const latest = [...sets].sort((a, b) => a.daysAgo - b.daysAgo)[0];
  return latest ? loadFromValue(latest.bodyWeight) : (0 as Load);
}
