import type { ShownResult } from '../contract/Answer.ts';
import type { Calculator } from '../contract/Calculator.ts';
import type { Texts } from '../fields/Field.ts';

/** The result for these texts; an outcome without one fails the test with its reason. */
export function shownResult(calculator: Calculator, texts: Texts): ShownResult {
  const answer = calculator.answer(texts);
  if (answer.kind === 'result') return answer;
  throw new Error(`no result: ${JSON.stringify(answer)}`);
}
