import { requireNumber } from '../basis/index.ts';
import { repsAtShare, type SourcedRepCurve } from '../strength/index.ts';
import type { AboveWorkCondition } from './AboveWork.ts';

/** What the conditions are judged by. */
export interface AboveWorkQuestion {
  readonly experience: 'new' | 'trained';
  readonly loadCanBeStopped: boolean;
  readonly curve: SourcedRepCurve;
  /** Share of the one-rep max of the heaviest load that may be taken above the work load; none when there is none. */
  readonly shareAbove: number | undefined;
}

/** Repetitions that have to be left after the one above the work load. */
const LEAST_LEFT = 2;

/** Deviations of ln kappa for a forecast that holds for nine people in ten. */
const CAUTIOUS = 1.2816;

/**
 * Whether one repetition above the work load may be planned, condition by condition. The forecast
 * is the cautious one: nine people in ten have more repetitions.
 *
 * @throws RangeError for a share outside 0 to 2.
 */
export function judgeAboveWork(question: AboveWorkQuestion): readonly AboveWorkCondition[] {
  const { experience, loadCanBeStopped, curve, shareAbove } = question;
  if (shareAbove !== undefined) requireNumber('judgeAboveWork', 'shareAbove', shareAbove, 0, 2);
  const cautious = { ...curve, kappa: curve.kappa * Math.exp(-CAUTIOUS * curve.kappaLogSd) };
  const left = shareAbove === undefined ? 0 : repsAtShare(shareAbove, cautious) - 1;
  return [
    {
      id: 'experience',
      met: experience === 'trained',
      message:
        'The lifter has trained this lift for months and knows how near to failure a set is.',
    },
    {
      id: 'load-can-be-stopped',
      met: loadCanBeStopped,
      message: 'A partner or stops can take the load.',
    },
    {
      id: 'load-exists',
      met: shareAbove !== undefined,
      message: 'The equipment makes a load from just above to 5 % above the work load.',
    },
    {
      id: 'well-short-of-failure',
      met: left >= LEAST_LEFT,
      message: `By a cautious forecast, ${LEAST_LEFT} or more repetitions are left after the one.`,
    },
  ];
}
