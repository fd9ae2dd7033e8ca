import type { Suggestion } from '@windlass/core/exchange';
import type { ExchangeResult } from './compute.ts';

/** Everything that is offered, in its order. */
export function optionsOf({ setUps, others }: ExchangeResult): readonly Suggestion[] {
  return [...setUps, ...others];
}
