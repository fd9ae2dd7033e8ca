import { formatNumber } from '@windlass/calculators/ui';
import { useEffect, useState } from 'preact/hooks';
import { askToKeep, type KeepingState, keepingState } from '../storage/index.ts';
import { useKeeping } from './Keeping.ts';
import { words } from './words.ts';

/** How much room is used, and whether the browser keeps it when room is short. */
export function Lasting() {
  const { people } = useKeeping();
  const [state, setState] = useState<KeepingState>();
  const [isRefused, setRefused] = useState(false);
  useEffect(() => {
    let isWanted = true;
    void keepingState().then((now) => isWanted && setState(now));
    return () => {
      isWanted = false;
    };
  }, [people]);
  const ask = async () => {
    const now = await askToKeep();
    setState(now);
    setRefused(now.isLasting !== true);
  };
  const { usedBytes, roomBytes, isLasting } = state ?? {};
  return (
    <div class="lasting">
      <p class="soft">
        {usedBytes !== undefined &&
          roomBytes !== undefined &&
          words.kept.used(sizeWords(usedBytes), sizeWords(roomBytes))}{' '}
        {isLasting === undefined
          ? words.kept.unsaid
          : isLasting
            ? words.kept.lasting
            : words.kept.notLasting}
      </p>
      {isLasting === false && (
        <button type="button" class="wl-button" onClick={ask}>
          {words.kept.ask}
        </button>
      )}
      <p class="soft" aria-live="polite">
        {isRefused && words.kept.refused}
      </p>
    </div>
  );
}

function sizeWords(bytes: number): string {
  const [value, unit] = words.size(bytes);
  return `${formatNumber(value, value < 10 ? 1 : 0)} ${unit}`;
}
