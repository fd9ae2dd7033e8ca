import type { ChainPlan, ChainRefusal, NearestChain } from '@windlass/core/extension';
import type { Caution } from '@windlass/core/safety';
import type { NextLink, NoAnswer } from '../contract/Answer.ts';
import { inputTexts } from '../shared/inputTexts.ts';
import { onceById } from '../shared/onceById.ts';
import { RefusalReasons } from '../shared/RefusalReasons.tsx';
import { type ChainInput, fields } from './fields.ts';
import { inputOfStages } from './stagesOf.ts';
import { said } from './words.ts';

type Refused = Extract<ChainPlan, { kind: 'refused' }>;

/** The outcome for a chain that is not offered: every reason, and what comes nearest. */
export function refusedChain(
  input: ChainInput,
  { refusals, nearest }: Refused,
  cautions: readonly Caution[],
): NoAnswer {
  return {
    kind: 'none',
    reason: refusals[0]?.code ?? 'refused',
    label: said.refusedLabel,
    headline: said.refused,
    message: said.refusedSays(refusals.length),
    cautions,
    sources: onceById(refusals.flatMap(({ sources }) => sources)),
    next: [...nearestLink(input, nearest), ...otherExercise(input, refusals)],
    view: () => (
      <>
        <h2 class="wl-heading">{said.why}</h2>
        <RefusalReasons refusals={gravest(refusals)} />
        {nearest.kind === 'stop-short' && <p>{said.stopShort(nearest.repsInReserve)}</p>}
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

function nearestLink(input: ChainInput, nearest: NearestChain): readonly NextLink[] {
  if (nearest.kind !== 'chain') return [];
  const carry = inputTexts(fields, { ...input, ...inputOfStages(nearest.stages, input) });
  const label = said.nearest(said.chain(nearest.stages.map(said.stage)));
  return [{ calculator: 'past-failure', label, carry }];
}

function otherExercise(
  { exercise, company, stops }: ChainInput,
  refusals: readonly ChainRefusal[],
): readonly NextLink[] {
  if (!refusals.some(({ code }) => code.startsWith('extension.alone'))) return [];
  const carry = { exercise, company, stops };
  return [{ calculator: 'exchange', label: said.otherExercise, carry }];
}

/** One reason for the first look: what concerns the whole set comes before what concerns a stage. */
function gravest(refusals: readonly ChainRefusal[]): readonly ChainRefusal[] {
  return [...refusals.filter(({ stage }) => stage === null), ...refusals].slice(0, 1);
}
