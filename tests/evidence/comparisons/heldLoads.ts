import {
  jointFatigueRates,
  type StudiedJoint,
  sustainedSeconds,
} from '../../../packages/core/src/capacity/index.ts';
import type { Comparison, Figure } from '../Comparison.ts';
import { readRows } from '../readRows.ts';

/** How long a load can be held still. */
export const heldLoads: Comparison = {
  id: 'held-loads',
  title: 'Loads held still',
  compares:
    'Measured endurance time of static holds, as the power curve over 369 published points gives it for each joint, against the fatigue model that holds and lowerings are forecast with.',
  tables: ['et_power_model', 'et_rohmert'],
  tolerance: {
    rule: 'a factor of two',
    reason:
      'A hold ends by will as much as by the muscle. The forecast varies the fatigue rate between people from 0.7 to 1.45 of the published one; half to double is what nearly all of that spread covers, and a plan does not change within it.',
  },
  unit: 'seconds',
  logarithmic: true,
  rows: () => [...joints(), ...rohmert()],
};

const loads = [20, 30, 40, 50, 60, 70, 80];
const outside = [10, 90];

function joints(): readonly Figure[] {
  return readRows('et_power_model').flatMap((row) => {
    const joint = row.text('joint') === 'hand_grip' ? 'grip' : (row.text('joint') as StudiedJoint);
    return [...loads, ...outside].map((percent) => ({
      label: `${joint}, ${percent} %`,
      predicted: seconds(percent, joint),
      ...doubled(row.number(`et_${percent}`)),
      ...(outside.includes(percent) && {
        aside: 'outside 20 to 80 %, where no answer is promised',
      }),
    }));
  });
}

function rohmert(): readonly Figure[] {
  return readRows('et_rohmert').map((row) => ({
    label: `Rohmert’s curve, ${100 * row.number('f')} %`,
    predicted: seconds(100 * row.number('f'), 'general'),
    ...doubled(row.number('T_s')),
    aside: 'formula recalled, no source read; superseded by the curves by joint',
  }));
}

const doubled = (observed: number): Pick<Figure, 'observed' | 'allowed'> => ({
  observed,
  allowed: [observed / 2, observed * 2],
});

function seconds(percent: number, joint: StudiedJoint): number {
  const answer = sustainedSeconds({
    targetLoad: percent / 100,
    fatigued: 0,
    rates: jointFatigueRates[joint],
  });
  return answer.kind === 'fails' ? answer.seconds : Number.POSITIVE_INFINITY;
}
