import type { Why } from '../contract/Answer.ts';
import { formatNumber } from '../ui/formatNumber.ts';
import { below } from './below/words.ts';
import type { ExchangeResult } from './compute.ts';
import type { ExchangeInput } from './fields.ts';
import { nameOf } from './nameOf.ts';
import { optionsOf } from './optionsOf.ts';

/** How options are ranked, and the rank of each. */
export function whyExchange({ wanted }: ExchangeInput, result: ExchangeResult): Why {
  return {
    formula: wanted === 'exercise' ? below.formula : below.areaFormula,
    steps: optionsOf(result).map((option) =>
      below.rank(nameOf(option), formatNumber(option.score)),
    ),
    restsOn: below.restsOn,
  };
}
