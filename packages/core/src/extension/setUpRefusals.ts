import { inSentence } from '../basis/index.ts';
import type { ChainRefusal } from './ChainRefusal.ts';
import { chainParameters } from './chainParameters.ts';
import { giessing } from './chainSources.ts';
import { positionWords } from './positionWords.ts';
import { refuse } from './refuse.ts';
import type { ChainSetting, HoldStage, LowerStage, Stage } from './Stage.ts';
import { stageAmounts } from './stageAmounts.ts';

/**
 * Refusals that come from the set-up: alone under a load, help without a partner, lowerings that
 * nothing brings back up, a hold where the exercise has none or where it asks too little.
 */
export function setUpRefusals(
  stages: readonly Stage[],
  setting: ChainSetting,
): readonly ChainRefusal[] {
  return [
    ...underTheLoad(setting),
    ...stages.flatMap((stage, index) => {
      if (stage.kind === 'assisted') return help(setting, index);
      if (stage.kind === 'lower') return wayBack(stage, stages[index - 1], setting, index);
      if (stage.kind === 'hold') return hold(stage, stages[index + 1], setting, index);
      return [];
    }),
  ];
}

function underTheLoad({ exercise, partner, stops }: ChainSetting): readonly ChainRefusal[] {
  const { name, atFailureAlone } = exercise;
  if (atFailureAlone === 'leave' || partner) return [];
  if (atFailureAlone === 'needs-stops') {
    if (stops) return [];
    const why = `When the ${inSentence(name)} fails alone, the load stays on the lifter unless stops catch it. A stranger nearby is not a partner.`;
    const instead =
      'Set stops or pins just below the lowest point and test them with the empty bar; or use dumbbells, a machine, a guided bar with stops or body weight, which can be left at any point. As it is, stop with one or two repetitions left.';
    return [refuse('alone-under-load', null, why, instead)];
  }
  const why = `When the ${inSentence(name)} fails, only a partner can take the load. A stranger nearby is not one.`;
  const instead =
    'Use an exercise that can be left at any point, or stop with one or two repetitions left.';
  return [refuse('alone-without-partner', null, why, instead)];
}

function help({ partner }: ChainSetting, stage: number): readonly ChainRefusal[] {
  if (partner) return [];
  const why =
    'Repetitions past failure need help with about a fifth of the load on the first and a third on the second, from a partner who knows the lift.';
  const instead =
    'Take load off and lift on, or hold and lower, on an exercise that can be left at any point.';
  return [refuse('no-partner', stage, why, instead, [giessing])];
}

function wayBack(
  { maxLowerings }: LowerStage,
  before: Stage | undefined,
  { exercise, partner }: ChainSetting,
  stage: number,
): readonly ChainRefusal[] {
  const atTheBottom = before?.kind === 'hold' && before.at === 'stretched';
  if (exercise.wayBack !== 'partner-only' || partner) return [];
  if (maxLowerings <= 1 && !atTheBottom) return [];
  const why = `Only the tired muscles or a partner could bring the load of the ${inSentence(exercise.name)} back to the top.`;
  const instead = atTheBottom
    ? 'Hold higher up, or leave the lowering out.'
    : 'Lower once, from where the set has come to.';
  return [refuse('no-way-back', stage, why, instead)];
}

function hold(
  { at, maxSeconds }: HoldStage,
  next: Stage | undefined,
  { exercise }: ChainSetting,
  stage: number,
): readonly ChainRefusal[] {
  const position = exercise.holds.find((candidate) => candidate.at === at);
  if (!position) {
    const others = exercise.holds.map((candidate) => positionWords[candidate.at]);
    const why = `The load of the ${inSentence(exercise.name)} cannot be held and left ${positionWords[at]}.`;
    const instead =
      others.length > 0
        ? `Hold ${others.reduce((before, other) => `${before} or ${other}`)}.`
        : 'Leave the hold out.';
    return [refuse('hold-not-here', stage, why, instead)];
  }
  const easy = position.momentArm < chainParameters.isometric.likely / exercise.eccentricFactor;
  if (next?.kind !== 'lower' || !easy || maxSeconds <= stageAmounts.easyHoldSeconds) return [];
  const percent = Math.round(position.momentArm * 100);
  const why = `The load turns with ${percent} % of its full effect ${positionWords[at]}: holding it until it slips would leave nothing for lowering.`;
  const instead = `Hold where the load is hardest, or for ${stageAmounts.easyHoldSeconds} seconds at most.`;
  return [refuse('hold-too-easy', stage, why, instead)];
}
