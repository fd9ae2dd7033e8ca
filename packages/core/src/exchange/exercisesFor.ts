import {
  type Exercise,
  exercises as everyExercise,
  type MuscleId,
  muscles,
} from '../anatomy/index.ts';
import { askFirst } from './askFirst.ts';
import {
  type Area,
  type AreaExchange,
  areaGroups,
  type ExchangeSetting,
  type Suggestion,
} from './Exchange.ts';
import { exchangeNotes } from './exchangeNotes.ts';
import { leftOutOf } from './leftOutOf.ts';
import { lightestForms } from './lightestForms.ts';
import { objections } from './objections.ts';
import { painSigns } from './painSigns.ts';
import { LEAST_IN_AREA, mainMuscles, rankingWeights } from './rankingWeights.ts';
import { readClinicianList } from './readClinicianList.ts';
import { type Fit, suggestionsFrom } from './suggestionsFrom.ts';

/**
 * What somebody can do for a part of the body within their limits, with what is at hand: one
 * exercise for each movement, best first.
 *
 * The filters are those of {@link exchangeFor}. Exercises that do at least 40 % of their work in
 * the area count; main muscles come before small ones, and exercises that take several joints along
 * before those that do not.
 *
 * @param area the part of the body; legs are hips, thighs and lower legs.
 * @param setting limits of the person, what is at hand, whether alone and to failure.
 * @returns `options`, `ask-first` or `nothing-suitable`, as for an exchange.
 * @example
 * ```ts
 * import { exercisesFor } from '@windlass/core/exchange';
 * import { limitsFor } from '@windlass/core/safety';
 * const limits = limitsFor({ clinician: { by: 'physician', handsOutOfUse: ['right'] } });
 * const atHand = { loads: ['stack'], stations: ['leg-press-machine'] } as const;
 * const legs = exercisesFor('legs', { limits, atHand });
 * legs.kind === 'options' && legs.suggestions[0]?.exercise.id; // 'leg-press'
 * ```
 */
export function exercisesFor(area: Area, setting: ExchangeSetting): AreaExchange {
  const list = setting.exercises ?? everyExercise;
  const filter = readClinicianList(setting.limits.notAllowed, list);
  const first = askFirst(setting, filter);
  if (first) return first;
  const against = (candidate: Exercise) => objections(candidate, setting, filter);
  const fit = (candidate: Exercise) => fitFor(area, candidate);
  const inArea = list.filter((candidate) => shareIn(area, candidate) >= LEAST_IN_AREA);
  const ranked = suggestionsFrom(inArea, setting, against, fit);
  const suggestions = ranked.filter(firstOfMovement).slice(0, setting.most ?? 5);
  const leftOut = leftOutOf(inArea, (candidate) => shareIn(area, candidate), against);
  if (!suggestions.length) {
    return {
      kind: 'nothing-suitable',
      message: `Nothing here trains the ${area} within these limits. Ask a clinician what is possible; nothing is loosened to fill the list.`,
      ask: ['physiotherapist', 'physician'],
      leftOut,
    };
  }
  return {
    kind: 'options',
    area,
    suggestions,
    leftOut,
    askAbout: lightestForms(inArea, filter, against),
    notes: exchangeNotes(setting),
    stop: painSigns(),
  };
}

function fitFor(area: Area, candidate: Exercise): Fit {
  const share = shareIn(area, candidate);
  return {
    score:
      weighedShare(area, candidate) + (candidate.span === 'compound' ? rankingWeights.compound : 0),
    reasonsFor: [
      {
        code: 'works-the-area',
        words: `${Math.round(share * 100)} % of its work falls on the ${area}.`,
      },
    ],
    reasonsAgainst: [],
  };
}

function shareIn(area: Area, exercise: Exercise): number {
  return musclesOf(area).reduce((sum, muscle) => sum + (exercise.direct[muscle] ?? 0), 0);
}

function weighedShare(area: Area, exercise: Exercise): number {
  return musclesOf(area).reduce((sum, muscle) => {
    const weight = mainMuscles.includes(muscle) ? 1 : rankingWeights.smallMuscle;
    return sum + weight * (exercise.direct[muscle] ?? 0);
  }, 0);
}

function musclesOf(area: Area): readonly MuscleId[] {
  return muscles.filter(({ group }) => areaGroups[area].includes(group)).map(({ id }) => id);
}

function firstOfMovement(
  { exercise }: Suggestion,
  at: number,
  ranked: readonly Suggestion[],
): boolean {
  return ranked.findIndex((other) => other.exercise.movement === exercise.movement) === at;
}
