import { inDecimals } from '../../basis/index.ts';
import { nextUp, type ReachableLoad, stepUp } from '../../equipment/index.ts';
import { type Load, scaleLoad } from '../../load/index.ts';
import type { LoadAdvice } from '../LoadAdvice.ts';
import { repsBeforeStep } from '../repsBeforeStep.ts';
import type { AdviceContext } from './AdviceContext.ts';
import { sameLoad } from './sameLoad.ts';
import { stepTo } from './stepTo.ts';
import { windowChances } from './windowChances.ts';

/** The top of the window is reached: the step up, or what to do instead of it. */
export function raiseLoad(context: AdviceContext): LoadAdvice {
  const { question, here, rules } = context;
  const { window, loads } = question;
  const from = here.load;
  const steps = stepsWithin(context, from);
  if (steps.length === 0) return tooFar(context, from);
  const chances = windowChances(question, steps);
  const most = Math.max(...chances.map(({ inside }) => inside));
  const best = Math.max(
    0,
    chances.findIndex(({ inside }) => inside === most),
  );
  const chance = chances[best];
  if (chance !== undefined && chance.before >= rules.tooHeavyChance) {
    return {
      ...sameLoad(context, window.maxReps),
      kind: 'repeat',
      because: 'forecast-against',
      says: 'The top of the window is reached, but by the forecast the next load is plainly too heavy for it: keep the load.',
    };
  }
  const load = steps[best] as ReachableLoad;
  const { percent } = stepTo(load, from);
  const after = nextUp(loads, load.load);
  const likely = Math.round(chance?.likelyReps ?? window.minReps);
  return {
    kind: 'raise',
    load,
    percent,
    aim: Math.max(window.minReps, Math.min(window.maxReps, likely)),
    ...(chance ? { chance } : {}),
    ...(after.kind === 'next' ? { nextStep: stepTo(after.chosen, load.load) } : {}),
    says: `The top of the window is reached: ${inDecimals(percent, 1)} % more, and begin again at about ${window.minReps}.`,
  };
}

/**
 * The heavier loads within the largest step, the lightest first. Steps smaller than the smallest are
 * passed over where a larger one is there.
 */
function stepsWithin({ list, rules }: AdviceContext, from: Load): readonly ReachableLoad[] {
  const { smallest, largest } = rules.stepPercent;
  const heaviest = scaleLoad(from, 100 + largest, 100);
  const up = list.loads.filter(({ load }) => load > from && load <= heaviest);
  const worthwhile = up.filter(({ load }) => load >= scaleLoad(from, 100 + smallest, 100));
  return worthwhile.length === 0 ? up.slice(-1) : worthwhile;
}

function tooFar(context: AdviceContext, from: Load): LoadAdvice {
  const { question } = context;
  const { window, loads, equipment, curve } = question;
  const step = stepUp(equipment, loads, from);
  if (step.kind === 'none') {
    return {
      ...sameLoad(context, window.maxReps),
      kind: 'repeat',
      because: 'nothing-heavier',
      says: 'Nothing heavier can be made here: a slower lowering or a pause makes the load harder.',
    };
  }
  const before = repsBeforeStep(from, step.to.load, window.minReps, curve);
  const percent = inDecimals(step.percent, 1);
  return {
    ...sameLoad(
      context,
      before.beyondCounting ? window.maxReps : Math.max(window.maxReps, before.aim),
    ),
    kind: 'reps-first',
    before,
    bridges: step.bridges,
    says: before.beyondCounting
      ? `The next load is ${percent} % heavier, too far for any count of repetitions to foretell: use one of the bridges, one change at a time.`
      : `The next load is ${percent} % heavier: reach about ${before.aim} repetitions with this one first.`,
  };
}
