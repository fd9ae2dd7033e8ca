import type { Band } from '@windlass/core/basis';
import { loadFromValue } from '@windlass/core/load';
import {
  compareEquations,
  type EquationAnswer,
  type EquationComparison,
  type EquationSpread,
  enduranceCurves,
  generalCurve,
  oneRepMaxKg,
  type PerformedSet,
  priorFor,
  type SourcedRepCurve,
  strengthFrom,
} from '@windlass/core/strength';
import { secondsPerRep } from '@windlass/core/tempo';
import type { Computed } from '../contract/Definition.ts';
import type { EquationsInput } from './fields.ts';
import { said } from './words.ts';

/** An equation that gives a number for this set. */
export interface Answered extends EquationAnswer {
  readonly oneRepMaxKg: number;
}

export interface EquationsResult {
  readonly comparison: EquationComparison;
  /** The equations for any lift and for this one, least first; none for a single rep. */
  readonly answered: readonly Answered[];
  /** Those that give no number here. */
  readonly broken: readonly EquationAnswer[];
  /** Over the equations that the answer speaks of; `null` for a single rep. */
  readonly spread: EquationSpread | null;
  /** Whether that spread is over equations made for such sets alone. */
  readonly isInside: boolean;
  readonly set: PerformedSet;
  readonly curve: SourcedRepCurve;
  /** What Windlass believes after the same set; `null` for a single rep. */
  readonly own: Band | null;
}

/** Past so many reps no answer rests on the few equations that go on. */
export const MOST_REPS = 10;

/** What every published equation makes of a set, and what Windlass does. */
export function computeEquations(input: EquationsInput): Computed<EquationsResult> {
  const { reps, lift, tempo } = input;
  const load = loadFromValue(input.load);
  const comparison =
    lift === 'any' ? compareEquations(load, reps) : compareEquations(load, reps, lift);
  const curve = curveOf(lift);
  const set: PerformedSet = {
    load,
    reps,
    end: { kind: 'failure' },
    day: 0,
    ...(tempo ? { secondsPerRep: secondsPerRep(tempo) } : {}),
  };
  if (comparison.kind === 'single') {
    const none = { answered: [], broken: [], spread: null, isInside: true, own: null };
    return { kind: 'result', result: { comparison, set, curve, ...none } };
  }
  const belief = strengthFrom({ sets: [set], prior: priorFor(curve), today: 0 });
  if (belief.kind === 'nothing-known') {
    return { kind: 'none', reason: belief.kind, headline: said.none, message: said.noSet };
  }
  const { answers, inside, all } = comparison;
  const isInside = inside !== undefined && reps <= MOST_REPS;
  const ours = answers.filter(({ place }) => place !== 'other-lift');
  return {
    kind: 'result',
    result: {
      comparison,
      answered: ours.flatMap(withNumber).sort((a, b) => a.oneRepMaxKg - b.oneRepMaxKg),
      broken: ours.filter(
        ({ equation, oneRepMaxKg: kg }) => kg === undefined && isFor(equation, lift),
      ),
      spread: isInside ? inside : all,
      isInside,
      set,
      curve,
      own: oneRepMaxKg(belief, 0.8, 'today'),
    },
  };
}

function withNumber(answer: EquationAnswer): readonly Answered[] {
  const { oneRepMaxKg: kg } = answer;
  return kg === undefined ? [] : [{ ...answer, oneRepMaxKg: kg }];
}

function isFor({ lift }: EquationAnswer['equation'], wanted: EquationsInput['lift']): boolean {
  return lift === undefined || lift === wanted;
}

const CURVES = {
  'bench-press': 'press',
  'leg-press': 'leg-press',
  'knee-extension': 'leg-isolation',
  squat: 'squat',
  deadlift: 'hinge',
} as const;

/** The curve of the lift; the general one for a lift that has no equation of its own. */
export function curveOf(lift: EquationsInput['lift']): SourcedRepCurve {
  return lift === 'any' ? generalCurve : enduranceCurves[CURVES[lift]];
}
