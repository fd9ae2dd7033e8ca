import type { PlannedChain } from './PlannedChain.ts';
import type { SheetChain } from './Sheet.ts';
import { stageWords } from './stageWords.ts';

/** How a set goes on past lifting failure, in words and numbers. */
export function sheetChain({ stages, dose, needs, notes, notFor }: PlannedChain): SheetChain {
  const [, ...further] = stages;
  return {
    stages: further.map(({ stage, count, secondsUnderLoad }) => ({
      words: stageWords(stage),
      ...(count && { count }),
      seconds: secondsUnderLoad,
    })),
    needs: needs.map(({ words }) => words),
    notes: [`It costs as much recovery as ${dose.hardSets} sets to failure.`, ...notes],
    notFor,
  };
}
