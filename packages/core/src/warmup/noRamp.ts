import { changeLoading } from '../equipment/index.ts';
import type { NoRamp } from './Ramp.ts';
import type { RampGear } from './rampGear.ts';
import { warmupSources } from './warmupSources.ts';

const MESSAGES: Readonly<Record<NoRamp['reason'], string>> = {
  'work-is-the-lightest-load':
    'Nothing here is lighter than the work load. Do five to eight slow repetitions with a lighter implement, or with none, and then the work set.',
  'already-warm':
    'The muscles are warm from the work before and the load is moderate. Begin with the work set.',
  'light-work':
    'The load is light for this lifter. The first repetitions of the work set are the warm-up.',
  'as-asked': 'No warm-up set, as it was asked for. Begin with the work set.',
};

/** No ramp: the work load straight away, and why. */
export function noRamp(reason: NoRamp['reason'], { workWays: [work] }: RampGear): NoRamp {
  return {
    kind: 'no-ramp',
    reason,
    message: MESSAGES[reason],
    work,
    changeToWork: changeLoading('nothing', work.loading),
    stripDown: changeLoading(work.loading, 'nothing'),
    sources: [
      reason === 'already-warm' ? warmupSources.secondLift : warmupSources.noMoreReps,
      warmupSources.rampShape,
    ],
  };
}
