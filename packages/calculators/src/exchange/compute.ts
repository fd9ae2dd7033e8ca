import { type Exercise, exercises } from '@windlass/core/anatomy';
import {
  type AreaOptions,
  type ExchangeOptions,
  exchangeFor,
  exercisesFor,
  type Suggestion,
} from '@windlass/core/exchange';
import { type Caution, cautionsFor } from '@windlass/core/safety';
import type { Computed } from '../contract/Definition.ts';
import { exerciseOf } from '../shared/exerciseFields.ts';
import type { ExchangeInput } from './fields.ts';
import { askFirstAnswer, nothingAnswer } from './noExchange.tsx';
import { askedOf, contextOf, settingOf } from './setting.ts';

export interface ExchangeResult {
  /** The exercise to be exchanged; `null` where anything for a part of the body was asked for. */
  readonly exercise: Exercise | null;
  readonly options: ExchangeOptions | AreaOptions;
  readonly setUps: readonly Suggestion[];
  readonly others: readonly Suggestion[];
  readonly cautions: readonly Caution[];
}

/** What fits instead, or whom to ask, or that nothing does. */
export function computeExchange(input: ExchangeInput): Computed<ExchangeResult> {
  const exercise = input.wanted === 'exercise' ? exerciseOf(exercises, input.exercise) : null;
  const cautions = cautionsFor(askedOf(input), contextOf(input));
  const setting = settingOf(input);
  const found =
    input.wanted === 'exercise'
      ? exchangeFor(exerciseOf(exercises, input.exercise), setting)
      : exercisesFor(input.wanted, setting);
  if (found.kind === 'ask-first') return askFirstAnswer(input, found, cautions);
  const setUps = 'setUps' in found ? found.setUps : [];
  const others =
    found.kind === 'nothing-suitable' ? [] : 'others' in found ? found.others : found.suggestions;
  if (found.kind === 'nothing-suitable') return nothingAnswer(input, found, cautions);
  return { kind: 'result', result: { exercise, options: found, setUps, others, cautions } };
}
