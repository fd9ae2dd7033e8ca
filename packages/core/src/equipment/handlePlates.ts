import { type Load, type LoadValue, loadFromValue } from '../load/index.ts';
import type { Plate } from './Equipment.ts';
import type { HandlingStep } from './Handling.ts';
import type { AssistanceLoading, PlateLoading, StackPlace } from './Loading.ts';
import { sharedPlates } from './sharedPlates.ts';
import { takeTurns } from './takeTurns.ts';

type Plain = PlateLoading | AssistanceLoading | 'nothing';

/** The two ends of each bar, which take turns. */
const BARS = [
  ['left', 'right'],
  ['first-handle-left', 'first-handle-right'],
  ['second-handle-left', 'second-handle-right'],
] as const;

const POSTS = ['post', 'belt'] as const;

/** Plates off and on, bar by bar, the two ends in turn; and help from a machine set or ended. */
export function handlePlates(from: Plain, to: Plain): readonly HandlingStep[] {
  return [
    ...BARS.flatMap((places) => barSteps(places, from, to)),
    ...POSTS.flatMap((place) => postSteps(place, from, to)),
    ...assistanceSteps(from, to),
  ];
}

function barSteps(
  places: readonly [StackPlace, StackPlace],
  from: Plain,
  to: Plain,
): readonly HandlingStep[] {
  const [left, right] = [change(places[0], from, to), change(places[1], from, to)];
  const off = takeTurns([left.off, right.off], -1, left.weight - right.weight);
  const tilt = off.at(-1)?.tilt ?? left.weight - right.weight;
  const on = takeTurns([left.on, right.on], 1, tilt);
  const written = (action: 'take-off' | 'put-on', turns: typeof off): readonly HandlingStep[] =>
    turns.map(({ end, plate, tilt }) => ({
      action,
      place: places[end],
      plate,
      sideDifference: Math.abs(tilt) as Load,
    }));
  return [...written('take-off', off), ...written('put-on', on)];
}

function postSteps(place: StackPlace, from: Plain, to: Plain): readonly HandlingStep[] {
  const { off, on } = change(place, from, to);
  const written = (action: 'take-off' | 'put-on') => (plate: Plate) =>
    ({ action, place, plate, sideDifference: 0 as Load }) as const;
  return [...off.map(written('take-off')), ...on.map(written('put-on'))];
}

function change(place: StackPlace, from: Plain, to: Plain) {
  const [before, after] = [platesAt(from, place), platesAt(to, place)];
  const shared = sharedPlates(before, after);
  return {
    off: before.slice(shared).reverse(),
    on: after.slice(shared),
    weight: before.reduce((sum, plate) => sum + loadFromValue(plate.weight), 0),
  };
}

function platesAt(loading: Plain, place: StackPlace): readonly Plate[] {
  if (loading === 'nothing' || loading.kind === 'assistance') return [];
  return loading.stacks.find((stack) => stack.place === place)?.plates ?? [];
}

function assistanceSteps(from: Plain, to: Plain): readonly HandlingStep[] {
  const [before, after] = [addedBy(from), addedBy(to)];
  return loadFromValue(before) === loadFromValue(after)
    ? []
    : [{ action: 'set-assistance', added: after }];
}

const NO_HELP: LoadValue = { value: 0, unit: 'kg' };

function addedBy(loading: Plain): LoadValue {
  return loading === 'nothing' || loading.kind === 'plates' ? NO_HELP : loading.added;
}
