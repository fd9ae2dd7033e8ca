import type { ReachableLoad } from '@windlass/core/equipment';
import { loadFace, loadWords } from '../shared/loadWords.ts';
import { formatNumber } from '../ui/formatNumber.ts';
import { LoadStairs } from '../ui/LoadStairs.tsx';
import type { GymResult } from './compute.ts';
import type { GymInput } from './fields.ts';
import { countedAs, spanWords } from './headlineOf.ts';
import { ORDINARY } from './loadJumps.ts';
import { madeOf } from './madeOf.ts';
import { numberWords } from './numberWords.ts';
import { runsWords } from './runsWords.ts';
import { said } from './words.ts';

interface GymViewProps {
  readonly input: GymInput;
  readonly result: GymResult;
}

/** Loads on either side of the chosen one that the stairs show. */
const BESIDE = 3;

/** How the chosen load is made, or all loads in a sentence; then the stairs around it. */
export function GymView({ input, result }: GymViewProps) {
  const { list, chosen } = result;
  const shown = around(result);
  const stairs = shown.map((one, at) => stairOf(one, shown[at - 1], one === chosen?.load, input));
  const heaviest = list.loads.at(-1)?.load || 1;
  const placeOf = (load: ReachableLoad | undefined) => Math.max(0, (load?.load ?? 0) / heaviest);
  const names = shown.map((one) => numberWords(one, input.show));
  return (
    <>
      <p class="wl-pieces">
        {chosen
          ? madeOf(input, chosen.load)
          : (runsWords(list.loads, input.show, 6) ?? spanWords(input, result))}
      </p>
      <LoadStairs
        stairs={stairs}
        all={list.loads.map(placeOf)}
        from={placeOf(shown[0])}
        to={placeOf(shown.at(-1))}
        end={endOf(input, result)}
        says={`${said.stairs(names.join(', '))} ${said.strip(spanWords(input, result))}`}
      />
    </>
  );
}

/** The heaviest load, by its number where the line begins at the number 0. */
function endOf(input: GymInput, result: GymResult): string {
  const { loads } = result.list;
  const { shown, load } = loads.at(-1) ?? loads[0];
  const counted = countedAs(input, result);
  if (counted === null || counted === 'stack') return loadWords(shown, input.show);
  return said.moves.body(loadWords(load, input.show));
}

function around({ list: { loads }, chosen, jumps }: GymResult): readonly ReachableLoad[] {
  const widest = jumps.reduce(
    (best, jump, at) => (jump.percent > (jumps[best]?.percent ?? 0) ? at : best),
    0,
  );
  const middle = chosen?.place ?? widest;
  const first = Math.max(0, Math.min(middle - BESIDE, loads.length - 2 * BESIDE - 1));
  return loads.slice(first, first + 2 * BESIDE + 1);
}

function stairOf(
  one: ReachableLoad,
  before: ReachableLoad | undefined,
  isChosen: boolean,
  { show }: GymInput,
) {
  const percent = before && before.load > 0 ? (100 * (one.load - before.load)) / before.load : null;
  return {
    label: formatNumber(loadFace(one.shown, show).exact, 1),
    value: one.load,
    isChosen,
    ...(percent === null
      ? {}
      : {
          step: `+${formatNumber(percent, percent < ORDINARY ? 1 : 0)}\u00a0%`,
          isLarge: percent > ORDINARY,
        }),
  };
}
