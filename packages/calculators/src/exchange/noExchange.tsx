import type { AskFirst, NothingSuitable } from '@windlass/core/exchange';
import type { Caution } from '@windlass/core/safety';
import type { NoAnswer } from '../contract/Answer.ts';
import { PROJECT_CHOICE } from '../shared/sources.ts';
import { words } from '../words.ts';
import type { ExchangeInput } from './fields.ts';
import { LeftOutList } from './LeftOutList.tsx';
import { labelOf } from './labelOf.ts';
import { said } from './words.ts';

/** Somebody has to be asked before anything is exchanged. */
export function askFirstAnswer(
  input: ExchangeInput,
  { reasons, ask }: AskFirst,
  cautions: readonly Caution[],
): NoAnswer {
  return {
    kind: 'none',
    reason: 'ask-first',
    label: labelOf(input),
    headline: said.askFirst,
    message: said.askFirstSays,
    cautions,
    sources: [PROJECT_CHOICE],
    view: () => (
      <>
        <ul class="wl-sources">
          {[...new Set(reasons.map((reason) => reason.words))].map((why) => (
            <li key={why}>{why}</li>
          ))}
        </ul>
        <p>
          <strong>{adviserWords(ask)}</strong>
        </p>
      </>
    ),
  };
}

/** Nothing passes, and nothing is loosened to fill the list. */
export function nothingAnswer(
  input: ExchangeInput,
  { message, ask, leftOut }: NothingSuitable,
  cautions: readonly Caution[],
): NoAnswer {
  return {
    kind: 'none',
    reason: 'nothing-suitable',
    label: labelOf(input),
    headline: said.nothing,
    message: said.nothingSays,
    cautions,
    sources: [PROJECT_CHOICE],
    view: () => (
      <>
        <p>{message}</p>
        <p>
          <strong>{adviserWords(ask)}</strong>
        </p>
      </>
    ),
    details: () => <LeftOutList leftOut={leftOut} />,
  };
}

function adviserWords(ask: AskFirst['ask']): string {
  return words.cautions.ask(ask.map((adviser) => words.cautions.advisers[adviser]));
}
