import { type NoChoice, nearestAtMost } from '../../equipment/index.ts';
import { scaleLoad } from '../../load/index.ts';
import { generalCurve } from '../../strength/index.ts';
import type { LoadAdvice } from '../LoadAdvice.ts';
import { stallCauses } from '../stallCauses.ts';
import { stallCheck } from '../stallCheck.ts';
import { topSets } from '../topSets.ts';
import type { AdviceContext } from './AdviceContext.ts';
import { sameLoad } from './sameLoad.ts';
import { stepTo } from './stepTo.ts';
import { windowChances } from './windowChances.ts';

/** A session under the window: once more, lighter, or back by a tenth. */
export function afterMiss(context: AdviceContext): LoadAdvice {
  const { question, rules, sessions, last, list, here } = context;
  const { window, curve = generalCurve, hoursNeeded } = question;
  const top = topSets(last);
  const target = { sets: top.sets.length, reps: window.minReps };
  const stall = stallCheck({ sessions, target, curve, rules });
  if (stall.kind === 'stall') {
    const back = nearestAtMost(list, scaleLoad(here.load, 100 - rules.resetPercent, 100));
    if (back.kind === 'none') return { kind: 'no-loads', why: back as NoChoice };
    return {
      kind: 'reset',
      load: back.chosen,
      aim: window.minReps,
      nextStep: stepTo(here, back.chosen.load),
      stall,
      causes: stallCauses({ sessions, hoursNeeded }),
      says: `${stall.says} Take the load back by about ${rules.resetPercent} % and climb again in ordinary steps.`,
    };
  }
  const lighter = list.loads.filter(({ load }) => load < here.load);
  const [now, ...below] = windowChances(question, [here, ...lighter.slice(-8)]);
  if (now !== undefined && now.before >= rules.tooHeavyChance && below.length > 0) {
    const best = below.reduce((a, b) => (b.inside >= a.inside ? b : a));
    const load = lighter.slice(-8)[below.indexOf(best)] ?? here;
    return {
      kind: 'lower',
      load,
      aim: window.minReps,
      chance: best,
      says: 'The load is plainly too heavy for this window: take the one that most likely ends inside it.',
    };
  }
  const isRising = stall.kind === 'missed-but-rising';
  return {
    ...sameLoad(context, window.minReps),
    kind: 'repeat',
    because: isRising ? 'missed-but-rising' : 'missed',
    says: `${stall.says} Keep the load.`,
  };
}
