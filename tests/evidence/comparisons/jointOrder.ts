import {
  jointFatigueRates,
  type StudiedJoint,
  sustainedSeconds,
} from '../../../packages/core/src/capacity/index.ts';
import type { Comparison } from '../Comparison.ts';
import { readRows } from '../readRows.ts';

/** Which joint holds longest. */
export const jointOrder: Comparison = {
  id: 'joint-order',
  title: 'Which joint holds longest',
  compares:
    'The published ranking of joints by endurance against the time to failure at half of maximal strength.',
  tables: ['isometric-endurance-context'],
  tolerance: {
    rule: 'each joint before the next in the ranking',
    reason: 'A ranking has no figures.',
  },
  rows: () => {
    const joints = readRows('isometric-endurance-context').map((row) => row.text('joint'));
    return joints.slice(1).map((next, index) => {
      const before = joints[index] ?? '';
      const [longer, shorter] = [seconds(before), seconds(next)];
      const holds = longer > shorter;
      return {
        label: `${before} against ${next}`,
        found: `${before} holds longer`,
        given: `${longer.toFixed(0)} and ${shorter.toFixed(0)} s`,
        holds,
        ...(!holds && {
          miss: 'The two cross between 40 and 50 %: the grip holds longer at heavier loads in the measured curves, and the published constants put the elbow higher at every load.',
        }),
      };
    });
  },
};

function seconds(name: string): number {
  const joint = (name === 'hand/grip' ? 'grip' : name) as StudiedJoint;
  const answer = sustainedSeconds({
    targetLoad: 0.5,
    fatigued: 0,
    rates: jointFatigueRates[joint],
  });
  return answer.kind === 'fails' ? answer.seconds : Number.POSITIVE_INFINITY;
}
