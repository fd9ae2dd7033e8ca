import { addLoads, type Load, type LoadValue, loadFromValue } from '../load/index.ts';
import type { BodyStation, EquipmentUse } from './Equipment.ts';
import { SUPPORTED_SHARE } from './equipmentNotes.ts';
import type { NoLoads } from './Loading.ts';
import { movedBodyWeight } from './movedBodyWeight.ts';
import { platePosts } from './platePosts.ts';
import type { Rig, RigBase } from './Rig.ts';
import { rigKinds } from './rigKinds.ts';

/** The person, with weight on a belt or with help; the mass is what is added. */
export function rigForBody(station: BodyStation, use: EquipmentUse): Rig | NoLoads {
  if (use.bodyWeight === undefined) {
    return {
      kind: 'none',
      reason: 'body-weight-not-given',
      message: `On ${station.name} the person is the load, so the body weight of the day is needed.`,
    };
  }
  const moved = movedBodyWeight(loadFromValue(use.bodyWeight), use.movedShare);
  const helps = station.assistance ?? [];
  const usable = helps.filter((help) => loadFromValue(help) < moved.low);
  const { belt } = station;
  const ranged = moved.low < moved.high;
  return {
    kind: 'rig',
    counts: 'added',
    standing: ranged ? 'estimate' : 'exact',
    notes: [
      ...(ranged ? [SUPPORTED_SHARE] : []),
      ...(usable.length < helps.length
        ? [
            {
              code: 'equipment.assistance-over-body-weight',
              message:
                'Help as large as the weight that is moved leaves nothing to lift, so those settings are left out.',
            },
          ]
        : []),
    ],
    bases: [...usable.map(helpBase), ...beltBases(belt)],
    kinds: belt ? rigKinds([...(belt.plates ?? use.plates ?? []), ...(belt.pieces ?? [])], 1) : [],
    piecesPerGroup: 1,
    loadOf: (added) => addLoads(moved.middle, added),
    ...(ranged
      ? {
          rangeOf: (added) => ({
            low: addLoads(moved.low, added),
            high: addLoads(moved.high, added),
          }),
        }
      : {}),
    shownOf: (added) => added,
  };
}

function helpBase(help: LoadValue): RigBase {
  if (help.value <= 0) {
    throw new RangeError(`equipment: assistance must be more than 0, got ${help.value}`);
  }
  const added = { value: -help.value, unit: help.unit };
  return {
    mass: loadFromValue(added),
    pieces: 0,
    takesKinds: false,
    build: () => ({ kind: 'assistance', added, pieces: 0 }),
  };
}

function beltBases(belt: BodyStation['belt']): readonly RigBase[] {
  const alone = platePosts(0 as Load, [], false);
  return belt === undefined
    ? [alone]
    : [alone, platePosts(belt.base ? loadFromValue(belt.base) : (0 as Load), ['belt'])];
}
