import type { ChainForecast } from '@windlass/core/extension';
import { chainTimes } from '@windlass/core/extension';

/**
 * When a set that is followed live ends at the latest: half as long again as the long end of the
 * forecast under load, and the time with the load down. A choice of this project, in whole tens
 * from 60 s to 15 min.
 */
export function longestSeconds({
  stages,
  secondsUnderLoad,
}: Pick<ChainForecast, 'stages' | 'secondsUnderLoad'>): number {
  const down = stages.reduce((sum, { stage }) => {
    if (stage.kind === 'pause') return sum + stage.seconds;
    if (stage.kind === 'lower') return sum + stage.maxLowerings * LONGEST_RESET;
    return sum + chainTimes.changeSeconds;
  }, 0);
  const tens = Math.ceil((secondsUnderLoad.high * 1.5 + down) / 10) * 10;
  return Math.min(900, Math.max(60, tens));
}

const LONGEST_RESET = Math.max(...Object.values(chainTimes.resetSeconds));
