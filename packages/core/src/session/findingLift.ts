import { loadFromValue } from '../load/index.ts';
import { enduranceCurves, findingProtocol, findingRules } from '../strength/index.ts';
import { secondsPerRep } from '../tempo/index.ts';
import type { FindingLift, LeftOutLift, LiftBasis, Refusal } from './LiftPlan.ts';
import { madeHere } from './madeHere.ts';
import type { LiftQuestion } from './planLift.ts';

const NO_CHAIN: Refusal = {
  what: 'chain',
  code: 'session.chain-load-unknown',
  message:
    'No set goes on past lifting failure while its load is still looked for. Stop with repetitions left.',
};

/** How to find the load of a lift of which nothing is known, from the lightest or from a fixed one. */
export function findingLift(question: LiftQuestion, basis: LiftBasis): FindingLift | LeftOutLift {
  const { lift } = question;
  const { intent, loads, exercise, equipment } = lift;
  const pace = secondsPerRep(intent.tempo);
  const step = findingProtocol({
    choices: loads.loads,
    window: intent.window,
    secondsPerRep: pace,
    curve: enduranceCurves[exercise.endurance],
    tries: [],
  });
  if (step.kind !== 'try') {
    const message = `${equipment.name} has no load to begin with for ${exercise.name}.`;
    return { kind: 'left-out', intent, reason: 'no-loads', message, exchanges: [] };
  }
  const asked = intent.overrules?.load;
  const isOther = asked !== undefined && loadFromValue(asked) !== step.choice.shown;
  const made = isOther ? madeHere(lift, asked) : step.choice;
  const isRefused = 'code' in made;
  return {
    kind: 'finding',
    lift,
    secondsPerRep: pace,
    firstTry: isRefused ? step.choice : made,
    reps: step.reps,
    stopWithLeft: step.stopWithLeft,
    mostTries: findingRules.mostTries,
    basis,
    ...(question.chosenFor && { chosenFor: question.chosenFor }),
    overruled: {
      ...question.overruled,
      ...(isOther && !isRefused && { load: { chosen: step.choice } }),
    },
    refused: [
      ...question.refused,
      ...(isRefused ? [made] : []),
      ...(intent.chain && !question.skipChain ? [NO_CHAIN] : []),
    ],
  };
}
