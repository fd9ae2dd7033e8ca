import type { MuscleId } from '@windlass/core/anatomy';
import type { PairRefusal } from '@windlass/core/pairing';
import type { NoAnswer } from '../contract/Answer.ts';
import { onceById } from '../shared/onceById.ts';
import { RefusalReasons } from '../shared/RefusalReasons.tsx';
import type { PairInputs } from './fields.ts';
import { suggestions } from './suggestions.ts';
import { said } from './words.ts';

/** The outcome for a pair that is not offered: every reason, and pairs that fit at one spot. */
export function refusedPair(
  input: PairInputs,
  refusals: readonly PairRefusal[],
  target: readonly MuscleId[],
): NoAnswer {
  return {
    kind: 'none',
    reason: refusals[0]?.code ?? 'refused',
    label: said.refusedLabel,
    headline: said.refused,
    message: said.refusedSays,
    sources: onceById(refusals.flatMap(({ sources }) => sources)),
    next: suggestions(input, target).slice(0, 2),
    view: () => (
      <>
        <h2 class="wl-heading">{said.why}</h2>
        <RefusalReasons refusals={refusals.slice(0, 1)} />
      </>
    ),
    details: () =>
      refusals.length > 1 && (
        <section class="wl-panel">
          <h2 class="wl-heading">{said.allReasons}</h2>
          <RefusalReasons refusals={refusals} />
        </section>
      ),
  };
}
