import { type Counts, type ReachableLoad, reachableLoads } from '@windlass/core/equipment';
import type { Unit } from '@windlass/core/load';
import {
  generalCurve,
  loadForWindow,
  type PerformedSet,
  priorFor,
  type StrengthPosterior,
  strengthFrom,
  type WindowAnswer,
} from '@windlass/core/strength';
import { secondsPerRep, type Tempo } from '@windlass/core/tempo';
import type { NoAnswer } from '../contract/Answer.ts';
import type { Computed } from '../contract/Definition.ts';
import type { CountWindow } from '../fields/Field.ts';
import { type GearInput, gearOf } from '../shared/gearFields.ts';
import { performedSets, type SetRow } from '../shared/performedSets.ts';
import { type Considered, considered } from './considered.ts';
import { noneNear } from './noneNear.ts';
import { said } from './words.ts';

export interface WindowInput extends GearInput {
  readonly window: CountWindow;
  readonly tempo: Tempo;
  readonly sets: readonly SetRow[];
  readonly company: 'partner' | 'alone';
  readonly show: Unit;
}

export type Found = Extract<WindowAnswer<ReachableLoad>, { kind: 'found' }>;

export interface WindowResult {
  readonly sets: readonly PerformedSet[];
  readonly belief: StrengthPosterior;
  readonly answer: Found;
  readonly counts: Counts;
  readonly choices: Considered;
  readonly paceSeconds: number;
}

/** The load that most probably fails in the window at the tempo, from the sets that were done. */
export function computeLoadForWindow(input: WindowInput): Computed<WindowResult> {
  const { window, tempo, show } = input;
  const paceSeconds = secondsPerRep(tempo);
  const sets = performedSets(input.sets, input);
  const { equipment, use } = gearOf(input);
  const loads = reachableLoads(equipment, use);
  if (loads.kind === 'none') return none(loads.reason, loads.message);
  const belief = strengthFrom({ sets, prior: priorFor(generalCurve), today: 0 });
  if (belief.kind === 'nothing-known') return none('nothing-known', said.noSet);
  const choices = considered(loads.loads, belief);
  const answer = loadForWindow({
    posterior: belief,
    choices: choices.loads,
    window: { minReps: window.low, maxReps: window.high },
    secondsPerRep: paceSeconds,
  });
  if (answer.kind === 'no-loads') return none('no-loads', said.noWeight);
  if (answer.kind === 'none-near') return noneNear(answer, show);
  return {
    kind: 'result',
    result: { sets, belief, answer, counts: loads.counts, choices, paceSeconds },
  };
}

function none(reason: string, message: string): NoAnswer {
  return { kind: 'none', reason, headline: said.noLoad, message };
}
