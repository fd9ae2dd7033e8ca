import type { Equipment, EquipmentUse } from './Equipment.ts';
import type { NoLoads } from './Loading.ts';
import type { Rig } from './Rig.ts';
import { rigForBarbell } from './rigForBarbell.ts';
import { rigForBody } from './rigForBody.ts';
import { rigForFixed } from './rigForFixed.ts';
import { rigForHandles } from './rigForHandles.ts';
import { rigForMachine } from './rigForMachine.ts';
import { rigForOnePost } from './rigForOnePost.ts';
import { rigForStack } from './rigForStack.ts';

/** The rig of a piece of equipment in this use, or why it has no known loads. */
export function rigFor(equipment: Equipment, use: EquipmentUse): Rig | NoLoads {
  switch (equipment.kind) {
    case 'barbell':
      return rigForBarbell(equipment, use);
    case 'one-post':
      return rigForOnePost(equipment, use);
    case 'fixed':
      return rigForFixed(equipment, use);
    case 'handles':
      return rigForHandles(equipment, use);
    case 'stack':
      return rigForStack(equipment);
    case 'machine':
      return rigForMachine(equipment, use);
    case 'body':
      return rigForBody(equipment, use);
    case 'band':
      return {
        kind: 'none',
        reason: 'resistance-unknown',
        message: `The resistance of ${equipment.name} is not known: a band pulls harder the further it is stretched. Note the band and how far it is stretched, and count repetitions.`,
      };
  }
}
