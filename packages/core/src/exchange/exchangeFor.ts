import { type Exercise, exercises as everyExercise, type MuscleId } from '../anatomy/index.ts';
import { inSentence } from '../basis/index.ts';
import { askFirst } from './askFirst.ts';
import type { Exchange, ExchangeSetting } from './Exchange.ts';
import { exchangeNotes } from './exchangeNotes.ts';
import { leftOutOf } from './leftOutOf.ts';
import { lightestForms } from './lightestForms.ts';
import { muscleOf } from './muscleOf.ts';
import { muscleOverlap } from './muscleOverlap.ts';
import { objections } from './objections.ts';
import { painSigns } from './painSigns.ts';
import { positionWords } from './positionWords.ts';
import { LEAST_OVERLAP, rankingWeights } from './rankingWeights.ts';
import { readClinicianList } from './readClinicianList.ts';
import { samePurpose } from './samePurpose.ts';
import { type Fit, suggestionsFrom, waysOf } from './suggestionsFrom.ts';

/**
 * Which exercise instead of one, and why: other set-ups of the same one first, then exercises for
 * the same muscles that the person, the place and being alone allow.
 *
 * Filters are hard: a suggestion never loads a position to avoid, a paused joint or a hand out of
 * use, never needs what is not there, and never is what the clinician's list says or is like.
 * What is left is ranked by the share of the work that the two have in common, by movement, and
 * by what is to be eased. Ranks are a convention.
 *
 * @param exercise the one to be exchanged, as it is set up now.
 * @param setting limits of the person, what is at hand, whether alone and to failure.
 * @returns `options`; `ask-first` where a grave sign or an unreadable list comes before any
 *   exchange; `nothing-suitable` where nothing passes: then a clinician is to be asked.
 * @example
 * ```ts
 * import { findExercise } from '@windlass/core/anatomy';
 * import { exchangeFor } from '@windlass/core/exchange';
 * import { limitsFor } from '@windlass/core/safety';
 * const found = findExercise('cable-pulldown');
 * const limits = limitsFor({ complaints: [{ kind: 'elbow-outer', redFlags: [] }] });
 * const atHand = { loads: ['stack'], stations: ['cable'] } as const;
 * const exchange = found.kind === 'found' && exchangeFor(found.exercise, { limits, atHand });
 * exchange && exchange.kind === 'options' && exchange.setUps[0]?.setUps[0]?.id; // 'neutral-grip'
 * ```
 */
export function exchangeFor(exercise: Exercise, setting: ExchangeSetting): Exchange {
  const list = setting.exercises ?? everyExercise;
  const filter = readClinicianList(setting.limits.notAllowed, list);
  const first = askFirst(setting, filter, exercise);
  if (first) return first;
  const against = (candidate: Exercise) => objections(candidate, setting, filter);
  const fit = (candidate: Exercise) => fitFor(exercise, candidate);
  const problems = against(exercise);
  const others = list.filter(({ id }) => id !== exercise.id);
  const suggestions = suggestionsFrom(others, setting, against, fit).slice(0, setting.most ?? 5);
  const base = list.find(({ id }) => id === exercise.id) ?? exercise;
  const setUps = problems.length ? waysOf(base, setting, against, fit) : [];
  const near = others.filter((other) => fit(other));
  const leftOut = leftOutOf(near, (other) => muscleOverlap(exercise, other), against);
  if (problems.length && !setUps.length && !suggestions.length) {
    return {
      kind: 'nothing-suitable',
      message: `Nothing here trains what the ${inSentence(exercise.name)} trains within these limits. Ask a clinician what is possible; nothing is loosened to fill the list.`,
      ask: ['physiotherapist', 'physician'],
      leftOut,
    };
  }
  return {
    kind: 'options',
    against: problems,
    setUps,
    others: suggestions,
    leftOut,
    askAbout: lightestForms(others, filter, against),
    notes: exchangeNotes(setting),
    stop: painSigns(),
  };
}

function fitFor(wanted: Exercise, candidate: Exercise): Fit | undefined {
  const overlap = muscleOverlap(wanted, candidate);
  if (overlap < LEAST_OVERLAP || !samePurpose(wanted, candidate)) return undefined;
  const sameMovement = candidate.movement === wanted.movement;
  const spared = wanted.positions.filter((position) => !candidate.positions.includes(position));
  const lost = mainMuscles(wanted).filter((muscle) => !(muscle in candidate.direct));
  return {
    score:
      overlap +
      (sameMovement ? rankingWeights.sameMovement : 0) +
      (candidate.span === wanted.span ? rankingWeights.sameSpan : 0),
    reasonsFor: [
      {
        code: 'same-muscles',
        words: `${Math.round(overlap * 100)} % of its work falls on the same muscles.`,
      },
      ...(sameMovement ? [{ code: 'same-movement', words: 'It is the same movement.' }] : []),
      ...spared.map((position) => ({
        code: 'without-position',
        words: `It is without ${positionWords(position)}.`,
      })),
    ],
    reasonsAgainst: lost.map((muscle) => ({
      code: 'less-of-muscle',
      words: `It does less for: ${inSentence(muscleOf(muscle).name)}.`,
    })),
  };
}

function mainMuscles(exercise: Exercise): readonly MuscleId[] {
  return Object.keys(exercise.direct) as MuscleId[];
}
