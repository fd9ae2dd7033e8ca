import type { Band } from '@windlass/core/basis';
import {
  bodyLoad,
  type LoadList,
  nearestLoad,
  type ReachableLoad,
  reachableLoads,
  type StepUp,
  stepUp,
} from '@windlass/core/equipment';
import { supportedShares } from '@windlass/core/exchange';
import { type Load, loadFromValue, scaleLoad } from '@windlass/core/load';
import type { NoAnswer } from '../contract/Answer.ts';
import type { Computed } from '../contract/Definition.ts';
import { loadWords } from '../shared/loadWords.ts';
import { bridgeReps } from './bridgeReps.ts';
import { equipmentOf, type InUse, PUSH_UPS } from './equipmentOf.ts';
import type { GymInput } from './fields.ts';
import { type LoadJump, loadJumps } from './loadJumps.ts';
import { said } from './words.ts';

/** The load that answers a wish, and what lies above it. */
export interface Chosen {
  readonly place: number;
  readonly load: ReachableLoad;
  /** The wish in the count it was made in, and the chosen load in the same count. */
  readonly wish: Load;
  readonly reached: Load;
  readonly up: StepUp | null;
  /** Reps with this load that foretell the goal with the next; `null` where no curve can say. */
  readonly reps: Band | null;
}

export interface GymResult extends InUse {
  readonly list: LoadList;
  readonly jumps: readonly LoadJump[];
  readonly chosen: Chosen | null;
}

/** All loads of a piece of equipment, and the one nearest to what is wanted. */
export function computeGymLoads(input: GymInput): Computed<GymResult> {
  const inUse = equipmentOf(input);
  const list = reachableLoads(inUse.equipment, inUse.use);
  if (list.kind === 'none') {
    const { reason } = list;
    return input.gear === 'band'
      ? { kind: 'none', reason, headline: said.notKnown, message: said.band }
      : { kind: 'none', reason, headline: said.noLoad, message: list.message };
  }
  const refused = helpTooLarge(input);
  if (refused) return refused;
  const chosen =
    input.target === null ? null : choose(input, loadFromValue(input.target), list, inUse);
  return { kind: 'result', result: { ...inUse, list, jumps: loadJumps(list.loads), chosen } };
}

function choose(
  input: GymInput,
  target: Load,
  list: LoadList,
  { equipment }: InUse,
): Chosen | null {
  const byNumber = isByNumber(input, list);
  const wish =
    input.gear === 'body' && input.added === 'help' && byNumber ? negative(target) : target;
  const found = byNumber ? nearestNumber(list, wish) : nearestOf(list, wish);
  if (found === undefined) return null;
  const up = found.load > 0 ? stepUp(equipment, list, found.load) : null;
  const isStep = up?.kind === 'step' && up.size !== 'beyond-repetitions';
  return {
    place: list.loads.indexOf(found),
    load: found,
    wish,
    reached: byNumber ? found.shown : found.load,
    up,
    reps:
      isStep && list.standing !== 'relative'
        ? bridgeReps(input.goal, found.load, up.to.load)
        : null,
  };
}

/** Whether the wish is the number on the equipment, and not what is moved. */
export function isByNumber({ gear, wantedAs }: GymInput, { standing }: LoadList): boolean {
  if (gear === 'machine' && standing === 'relative') return true;
  return (gear === 'stack' || gear === 'machine' || gear === 'body') && wantedAs === 'shown';
}

function nearestOf(list: LoadList, wish: Load): ReachableLoad | undefined {
  const choice = nearestLoad(list, wish);
  return choice.kind === 'none' ? undefined : choice.chosen;
}

/** The load whose number is nearest, the lighter of two. */
function nearestNumber({ loads }: LoadList, wish: Load): ReachableLoad {
  return loads.reduce((best, one) =>
    Math.abs(one.shown - wish) < Math.abs(best.shown - wish) ? one : best,
  );
}

function helpTooLarge(input: GymInput): NoAnswer | null {
  const { gear, added, wantedAs, target, bodyWeight, moves, show } = input;
  if (gear !== 'body' || added !== 'help' || wantedAs !== 'shown' || target === null) return null;
  const share = moves === 'all' ? undefined : supportedShares[PUSH_UPS[moves]];
  const moved = share ? { low: share.top.mean, high: share.bottom.mean } : undefined;
  const helped = bodyLoad(loadFromValue(bodyWeight), negative(loadFromValue(target)), moved);
  if (helped.kind === 'load') return null;
  const { reason, message } = helped;
  const weight = loadWords(loadFromValue(bodyWeight), show);
  return {
    kind: 'none',
    reason,
    headline: said.nothingLeft,
    message: said.helped(message, weight),
  };
}

function negative(load: Load): Load {
  return scaleLoad(load, -1);
}
