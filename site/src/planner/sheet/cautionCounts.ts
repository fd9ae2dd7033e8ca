import type { Caution } from '@windlass/core/safety';
import { words } from '../words.ts';
import { cautionLevels } from './cautionOrder.ts';

/** `2 cautions, 1 note`: how many there are of each level. */
export function cautionCounts(cautions: readonly Caution[]): string {
  const counts = cautionLevels.flatMap((level) => {
    const count = cautions.filter((one) => one.level === level).length;
    return count > 0 ? [words.head.count[level](count)] : [];
  });
  return counts.join(', ') || words.head.noCautions;
}
