import { BarDrawing, drawnPlates } from '@windlass/calculators/ui';
import type { ReachableLoad } from '@windlass/core/equipment';
import { formatLoad, loadFromValue } from '@windlass/core/load';
import type { Lift, SheetLoad } from '@windlass/core/session';
import { words } from '../words.ts';
import { numberAndUnit } from './numberAndUnit.ts';

interface LoadViewProps {
  readonly load: SheetLoad;
  readonly choice: ReachableLoad;
  readonly lift: Lift;
  /** Stands before the number: `Start with`. */
  readonly before?: string;
}

/** A load: the number first and largest, what it counts, how it is put together. */
export function LoadView({ load, choice, lift, before }: LoadViewProps) {
  const { mark, number, unit, counts } = numberAndUnit(load.words);
  const saysItAlready = lift.loads.counts === 'plates' && choice.loading.pieces === 0;
  return (
    <div class="load">
      <div class="load-words">
        {before !== undefined && <p class="load-before">{before}</p>}
        <p class="load-number">
          {mark !== '' && <span class="load-mark">{mark}</span>}
          <span class="load-value">{number}</span> <span class="load-unit">{unit}</span>
        </p>
        <p class="load-counts">{counts}</p>
        {!saysItAlready && <p class="load-how">{load.loading}</p>}
      </div>
      <Bar choice={choice} lift={lift} loading={load.loading} />
    </div>
  );
}

/** The sleeve of a bar that is loaded alike on both sides; nothing for any other equipment. */
function Bar({
  choice,
  lift,
  loading,
}: Pick<LoadViewProps, 'choice' | 'lift'> & { loading: string }) {
  const { equipment } = lift;
  if (equipment.kind !== 'barbell' || choice.loading.kind !== 'plates') return null;
  const [left, right] = choice.loading.stacks;
  if (!left || !right || JSON.stringify(left.plates) !== JSON.stringify(right.plates)) return null;
  const bar = formatLoad(loadFromValue(equipment.bar), {
    unit: equipment.bar.unit,
  });
  return (
    <div class="load-bar wl-picture">
      <BarDrawing
        plates={drawnPlates(left.plates, 0)}
        barLabel={bar}
        says={words.lift.bar(equipment.name, loading)}
      />
    </div>
  );
}
