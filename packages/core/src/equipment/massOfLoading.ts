import { addLoads, type Load, loadFromValue } from '../load/index.ts';
import type { Equipment } from './Equipment.ts';
import type { Loading, PlateLoading } from './Loading.ts';
import type { Rig } from './Rig.ts';

/** The loadings that a kind of equipment can have. */
const LOADINGS: Readonly<Record<Equipment['kind'], readonly Loading['kind'][]>> = {
  barbell: ['plates'],
  'one-post': ['plates'],
  fixed: ['fixed'],
  handles: ['plates'],
  stack: ['pin'],
  machine: ['plates'],
  body: ['plates', 'assistance'],
  band: [],
};

/** The mass that a loading puts on a rig, in the rig's own count: by the hand for dumbbells. */
export function massOfLoading(equipment: Equipment, rig: Rig, loading: Loading): Load {
  if (!LOADINGS[equipment.kind].includes(loading.kind)) throw notPossible(equipment, loading);
  switch (loading.kind) {
    case 'fixed':
      return addLoads(...[loading.weight, ...loading.addOns].map(loadFromValue));
    case 'pin':
      return addLoads(...[loading.pin, ...loading.addOns].map(loadFromValue));
    case 'assistance':
      return loadFromValue(loading.added);
    case 'plates':
      return massOfPlates(equipment, rig, loading);
  }
}

function massOfPlates(equipment: Equipment, rig: Rig, loading: PlateLoading): Load {
  const base = rig.bases.find((candidate) => samePlaces(candidate.build([], 0), loading));
  if (base === undefined) throw notPossible(equipment, loading);
  const weights = loading.stacks.flatMap(({ plates }) => plates.map(({ weight }) => weight));
  const handles = Math.max(1, rig.piecesPerGroup / 2);
  return addLoads(base.mass, Math.round(addLoads(...weights.map(loadFromValue)) / handles) as Load);
}

function samePlaces(empty: Loading, loading: PlateLoading): boolean {
  if (empty.kind !== 'plates' || empty.stacks.length !== loading.stacks.length) return false;
  return empty.stacks.every(({ place }) => loading.stacks.some((stack) => stack.place === place));
}

function notPossible(equipment: Equipment, loading: Loading): RangeError {
  const places = loading.kind === 'plates' ? loading.stacks.map(({ place }) => place) : [];
  return new RangeError(
    `weighLoading: ${equipment.kind} cannot have a loading of ${[loading.kind, ...places].join(' ')}`,
  );
}
