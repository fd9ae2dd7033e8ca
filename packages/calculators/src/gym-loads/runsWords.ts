import type { ReachableLoad } from '@windlass/core/equipment';
import type { Unit } from '@windlass/core/load';
import { loadFace } from '../shared/loadWords.ts';
import { formatNumber } from '../ui/formatNumber.ts';
import { stepRuns } from './stepRuns.ts';
import { said } from './words.ts';

/** `4 to 24 by 2, 28 to 32 by 2 kg`; `null` where that takes more runs than are wanted. */
export function runsWords(
  loads: readonly ReachableLoad[],
  unit: Unit,
  mostRuns: number,
): string | null {
  const runs = stepRuns(loads.map(({ shown }) => shown));
  if (runs.length > mostRuns) return null;
  const number = (load: ReachableLoad['shown']) => formatNumber(loadFace(load, unit).exact, 2);
  const names = runs.map(({ first, last, step }) =>
    step === 0 ? number(first) : said.run(number(first), number(last), number(step)),
  );
  return `${names.join(', ')}\u00a0${unit}`;
}
