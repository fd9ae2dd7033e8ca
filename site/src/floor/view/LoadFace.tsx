import { changeWords, loadingWords, newPerSide } from '@windlass/calculators/live';
import { BarDrawing, drawnPlates } from '@windlass/calculators/ui';
import { changeLoading, type ReachableLoad } from '@windlass/core/equipment';
import { numberAndUnit } from '../../planner/sheet/numberAndUnit.ts';
import { loadedBefore, stepLoad } from '../session/stepLoad.ts';
import { words } from '../words.ts';
import { useFloor, useStep } from './FloorContext.ts';
import { loadText, weightText } from './loadText.ts';

/** The load of the set: the number largest, how it is made, what the hands do to get there. */
export function LoadFace() {
  const { session, state } = useFloor();
  const here = useStep();
  if (!here) return null;
  const load = stepLoad(session, state, state.step);
  if (!load) {
    return (
      <div class="floor-load">
        <p class="floor-number">{words.noLoadYet}</p>
        <p class="floor-how">{words.noLoadSays}</p>
      </div>
    );
  }
  const { mark, number, unit } = numberAndUnit(loadText(load.shown, session.unit));
  const change = changeOf(loadedBefore(session, state, state.step), load);
  return (
    <div class="floor-load">
      <p class="floor-number">
        {mark !== '' && <small>{mark}</small>}
        {number} <small>{unit}</small>
      </p>
      <p class="floor-how">
        {countsWords(load, here.lift.counts)}
        <strong>{loadingWords(load)}</strong>
      </p>
      <p class="floor-change">{change.says}</p>
      <DrawnBar load={load} isNew={change.newPerSide} />
    </div>
  );
}

function countsWords({ loading }: ReachableLoad, counts: keyof typeof words.counts): string {
  const isOneHand = loading.kind === 'fixed' && loading.hands === 1 && counts === 'each-hand';
  return isOneHand ? words.oneHand : words.counts[counts];
}

/** What the hands do from the load before. The first load of a piece of equipment is made anew. */
function changeOf(before: ReachableLoad | null, load: ReachableLoad) {
  const handling = changeLoading(before?.loading ?? 'nothing', load.loading);
  const says = before && handling.pieces === 0 ? words.same : changeWords(handling);
  return { says, newPerSide: newPerSide(handling) };
}

function DrawnBar({ load, isNew }: { readonly load: ReachableLoad; readonly isNew: number }) {
  const here = useStep();
  const { loading } = load;
  if (!here?.lift.bar || loading.kind !== 'plates') return null;
  const [left, right] = loading.stacks;
  if (!left || !right || JSON.stringify(left.plates) !== JSON.stringify(right.plates)) return null;
  const { bar, equipmentName } = here.lift;
  return (
    <div class="floor-bar wl-picture">
      <BarDrawing
        plates={drawnPlates(left.plates, isNew)}
        barLabel={weightText(bar)}
        says={words.bar(equipmentName, loadingWords(load))}
      />
    </div>
  );
}
