import type { Equipment, EquipmentUse } from '@windlass/core/equipment';
import { supportedShares } from '@windlass/core/exchange';
import { loadFromValue, loadValue, scaleLoad } from '@windlass/core/load';
import { gearOf } from '../shared/gearFields.ts';
import type { GymInput } from './fields.ts';

/** A piece of equipment and how it is used. */
export interface InUse {
  readonly equipment: Equipment;
  readonly use: EquipmentUse;
}

/** The equipment that the form describes. */
export function equipmentOf(input: GymInput): InUse {
  const { gear, plates } = input;
  const hands = input.hands === '2' ? 2 : 1;
  switch (gear) {
    case 'bar':
    case 'stack':
      return gearOf({ ...input, gear });
    case 'dumbbells':
      return { equipment: gearOf({ ...input, gear }).equipment, use: { hands } };
    case 'handles':
      return {
        equipment: {
          kind: 'handles',
          id: 'handles',
          name: 'Handles',
          handle: input.handle,
          handles: hands,
          plates: input.smallPlates,
        },
        use: { hands },
      };
    case 'machine':
      return {
        equipment: {
          kind: 'machine',
          id: 'machine',
          name: 'Machine',
          posts: input.posts === '2' ? 2 : 1,
          start: input.start === 'known' ? input.startLoad : 'unknown',
          railDegrees: input.rail,
        },
        use: { plates },
      };
    case 'body':
      return bodyOf(input);
    case 'post':
      return {
        equipment: {
          kind: 'one-post',
          id: 'post',
          name: 'Post',
          form: input.form,
          base: input.base,
        },
        use: { plates },
      };
    case 'band':
      return { equipment: { kind: 'band', id: 'band', name: 'the band' }, use: {} };
  }
}

function bodyOf(input: GymInput): InUse {
  const { bodyWeight, moves, added, beltBase, helpStep, helpPlates, plates } = input;
  const station = { kind: 'body', id: 'station', name: 'the station' } as const;
  const share = moves === 'all' ? undefined : supportedShares[PUSH_UPS[moves]];
  const use = {
    bodyWeight,
    ...(share ? { movedShare: { low: share.top.mean, high: share.bottom.mean } } : {}),
  };
  if (added === 'nothing') return { equipment: station, use };
  if (added === 'belt') {
    return { equipment: { ...station, belt: { base: beltBase, plates } }, use };
  }
  const assistance = Array.from({ length: helpPlates }, (_, at) =>
    loadValue(scaleLoad(loadFromValue(helpStep), at + 1), helpStep.unit),
  );
  return { equipment: { ...station, assistance }, use };
}

/** The push-up that a choice stands for. */
export const PUSH_UPS = { 'push-up': 'feet-on-floor', knees: 'knees-on-floor' } as const;
