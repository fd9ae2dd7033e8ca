import {
  changeLoading,
  type HandlingStep,
  type LoadChoice,
  nearestAtLeast,
  nearestAtMost,
  nearestLoad,
  nextDown,
  nextUp,
  type Plate,
  type ReachableLoad,
  type ReachableLoads,
  reachableLoads,
} from '@windlass/core/equipment';
import { type Load, type LoadValue, loadFromValue, type Unit } from '@windlass/core/load';
import type { NoAnswer } from '../contract/Answer.ts';
import type { Computed } from '../contract/Definition.ts';
import { type BarInput, barbellOf } from '../shared/barFields.ts';
import { loadWords } from '../shared/loadWords.ts';
import { sideOf } from '../shared/sideOf.ts';
import { said } from './words.ts';

export interface BarLoadingInput extends BarInput {
  readonly target: LoadValue;
  readonly take: 'nearest' | 'at-most' | 'at-least';
  readonly before: LoadValue | null;
  readonly show: Unit;
}

export interface BarLoadingResult {
  readonly target: Load;
  readonly chosen: ReachableLoad;
  readonly below: ReachableLoad | null;
  readonly above: ReachableLoad | null;
  /** One side, innermost first. */
  readonly side: readonly Plate[];
  /** How many plates of a side, from the outside, go on in this change. */
  readonly newPerSide: number;
  readonly change: { readonly from: ReachableLoad | null; readonly steps: readonly HandlingStep[] };
}

/** The loading nearest to a target, or the one below or above it, and how to get there. */
export function computeBarLoading(input: BarLoadingInput): Computed<BarLoadingResult> {
  const target = loadFromValue(input.target);
  const loads = reachableLoads(barbellOf(input), { plates: input.plates });
  const choice = choose(input.take, loads, target);
  if (choice.kind === 'none' || loads.kind === 'none') return none(input, loads, choice);
  const { chosen } = choice;
  if (input.take === 'nearest' && chosen.load > target && chosen === loads.loads[0]) {
    return none(input, loads, { kind: 'none', reason: 'lightest-is-heavier', message: '' });
  }
  const from = input.before ? nearestLoad(loads, loadFromValue(input.before)) : null;
  const before = from && from.kind !== 'none' ? from.chosen : null;
  const steps = changeLoading(before?.loading ?? 'nothing', chosen.loading).steps;
  const isNewLeft = (step: HandlingStep) => step.action === 'put-on' && step.place === 'left';
  const [down, up] = [nextDown(loads, chosen.load), nextUp(loads, chosen.load)];
  return {
    kind: 'result',
    result: {
      target,
      chosen,
      below: down.kind === 'next' ? down.chosen : null,
      above: up.kind === 'next' ? up.chosen : null,
      side: sideOf(chosen),
      newPerSide: steps.filter(isNewLeft).length,
      change: { from: before, steps },
    },
  };
}

function choose(take: BarLoadingInput['take'], loads: ReachableLoads, target: Load): LoadChoice {
  if (take === 'at-most') return nearestAtMost(loads, target);
  return take === 'at-least' ? nearestAtLeast(loads, target) : nearestLoad(loads, target);
}

function none(input: BarLoadingInput, loads: ReachableLoads, choice: LoadChoice): NoAnswer {
  const { reason, message } = choice.kind === 'none' ? choice : { reason: '', message: '' };
  if (loads.kind === 'none') {
    return { kind: 'none', reason: loads.reason, headline: said.noLoad, message: loads.message };
  }
  const lightest = loads.loads[0].load;
  const heaviest = loads.loads.at(-1)?.load ?? lightest;
  if (reason === 'lightest-is-heavier') {
    const weighs = said.barWeighs(loadWords(lightest, input.show));
    return { kind: 'none', reason, headline: said.barIsHeavier, message: weighs };
  }
  const most = said.heaviest(message, loadWords(heaviest, input.show));
  return { kind: 'none', reason, headline: said.moreThanHere, message: most };
}
