import { requireNumber } from '../basis/index.ts';
import { type Load, loadFromValue, scaleLoad, subtractLoad } from '../load/index.ts';
import type { EquipmentUse, PlateMachine } from './Equipment.ts';
import { FRICTION, NOT_THE_FREE_LIFT, START_UNKNOWN } from './equipmentNotes.ts';
import { platePosts } from './platePosts.ts';
import type { Rig } from './Rig.ts';
import { rigKinds } from './rigKinds.ts';

/** Moving part and plates; the load is the part of their weight that acts at the handle. */
export function rigForMachine(machine: PlateMachine, use: EquipmentUse): Rig {
  const unknown = machine.start === 'unknown';
  const start = machine.start === 'unknown' ? (0 as Load) : loadFromValue(machine.start);
  return {
    kind: 'rig',
    counts: 'plates',
    standing: unknown ? 'relative' : 'estimate',
    notes: [...(unknown ? [START_UNKNOWN] : []), FRICTION, NOT_THE_FREE_LIFT],
    bases: [platePosts(start, machine.posts === 2 ? ['left', 'right'] : ['post'])],
    kinds: rigKinds(machine.plates ?? use.plates ?? [], machine.posts),
    piecesPerGroup: machine.posts,
    sleeveMm: machine.sleeveMm,
    loadOf: (mass) => railForce(mass, machine.railDegrees ?? 90, machine.leverRatio ?? 1),
    shownOf: (mass) => subtractLoad(mass, start),
  };
}

/** Weight along the rail at the handle: mass × sin(angle) × lever ratio, friction left out. */
function railForce(mass: Load, railDegrees: number, leverRatio: number): Load {
  requireNumber('equipment', 'railDegrees', railDegrees, 1, 90);
  requireNumber('equipment', 'leverRatio', leverRatio, 0.01, 10);
  return scaleLoad(scaleLoad(mass, Math.sin((railDegrees * Math.PI) / 180)), leverRatio);
}
