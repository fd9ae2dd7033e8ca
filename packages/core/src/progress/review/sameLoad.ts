import { nextUp } from '../../equipment/index.ts';
import type { AdviceContext } from './AdviceContext.ts';
import { stepTo } from './stepTo.ts';
import { windowChances } from './windowChances.ts';

/** The load of last time once more. */
export function sameLoad({ question, here }: AdviceContext, aim: number) {
  const chance = windowChances(question, [here])[0];
  const next = nextUp(question.loads, here.load);
  return {
    load: here,
    aim,
    ...(chance ? { chance } : {}),
    ...(next.kind === 'next' ? { nextStep: stepTo(next.chosen, here.load) } : {}),
  };
}
