import {
  type Answer,
  type Calculator,
  calculators,
  decodeAddress,
  encodeAddress,
  renderCalculator,
  type Texts,
} from '@windlass/calculators';
import { fieldTexts } from '../inputs/fieldTexts.ts';
import { anyText, damaged } from '../inputs/texts.ts';
import { requireInertMarkup } from '../requireInertMarkup.ts';
import type { Target } from '../Target.ts';

/** Every calculator with whatever stands in its fields, and its address. */
export const calculatorTargets: readonly Target[] = calculators.flatMap((calculator) => [
  {
    name: `calculator ${calculator.id}`,
    weight: 1,
    mostMs: 3000,
    make: (random) => fieldTexts(calculator, random),
    run: (texts: Texts) => answered(calculator, texts),
  },
  {
    name: `page of ${calculator.id}`,
    weight: 0.3,
    mostMs: 3000,
    make: (random) => fieldTexts(calculator, random),
    run: (texts: Texts) => {
      const markup = renderCalculator(calculator, { query: encodeAddress(calculator, texts) });
      requireInertMarkup(markup);
      return markup;
    },
  },
  {
    name: `address of ${calculator.id}`,
    weight: 10,
    mostMs: 200,
    make: (random) => {
      const query = encodeAddress(calculator, fieldTexts(calculator, random));
      return random.oneIn(3) ? anyText(random) : damaged(query, random);
    },
    run: (query: string) => {
      const { texts, others } = decodeAddress(calculator, query);
      const again = decodeAddress(calculator, encodeAddress(calculator, texts, others));
      if (JSON.stringify(again) !== JSON.stringify({ texts, others })) {
        throw new Error(`the address changes what it holds: ${JSON.stringify(again)}`);
      }
      return again;
    },
  },
]);

function answered(calculator: Calculator, texts: Texts): unknown {
  const steps = Object.keys(calculator.fields).flatMap((name) => [
    calculator.stepLoad(name, texts, 1),
    calculator.stepLoad(name, texts, -1),
    calculator.newRow(name, texts),
  ]);
  return [steps, plainly(calculator.answer(texts))];
}

/** An answer without the functions that draw it. */
function plainly(answer: Answer): unknown {
  return Object.fromEntries(
    Object.entries(answer).filter(([, part]) => typeof part !== 'function'),
  );
}
