import { encodeAddress } from '../address/encodeAddress.ts';
import type { Texts } from '../fields/Field.ts';
import type { Answer } from './Answer.ts';
import type { Calculator } from './Calculator.ts';
import type { CalculatorResult } from './CalculatorResult.ts';

/**
 * An answer as plain data, as the page around an embedded calculator is told it: no functions, no
 * pictures, `null` where there is nothing. Never throws.
 *
 * @example
 * ```ts
 * import { findCalculator, resultOf } from '@windlass/calculators';
 *
 * const tempoSeconds = findCalculator('tempo-seconds');
 * const texts = { tempo: '4-1-2-0', reps: '8' };
 * const result = tempoSeconds && resultOf(tempoSeconds, texts, tempoSeconds.answer(texts));
 * result?.headline?.exact; // 56
 * result?.query; // ''
 * ```
 */
export function resultOf(calculator: Calculator, texts: Texts, answer: Answer): CalculatorResult {
  const common = {
    calculator: calculator.id,
    query: encodeAddress(calculator, texts),
    texts: { ...calculator.defaults, ...texts },
    kind: answer.kind,
    headline: null,
    band: null,
    says: '',
    cautions: [],
    problems: [],
  };
  if (answer.kind === 'unreadable') {
    const problems = Object.entries(answer.problems).flatMap(([field, found]) =>
      found.map(({ code, message }) => ({ field, code, message })),
    );
    return { ...common, problems };
  }
  const cautions = (answer.cautions ?? []).map(({ id, level, what }) => ({ id, level, what }));
  if (answer.kind === 'none') return { ...common, says: answer.message, cautions };
  const { headline, certainty } = answer;
  const band = certainty.kind === 'band' ? { ...certainty.band, unit: certainty.unit } : null;
  return { ...common, headline, band, says: certainty.says, cautions };
}
