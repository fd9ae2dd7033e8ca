import type { LoggedSet } from '@windlass/core/progress';
import { dayNumber } from '@windlass/core/recovery';
import type { NextLink } from '../contract/Answer.ts';
import { loadText, windowText } from '../fields/fieldText.ts';
import { reviewLifts } from '../precomputed/reviewLifts.ts';
import type { GearInput } from '../shared/gearFields.ts';
import { gearTexts } from '../shared/gearTexts.ts';
import { workText } from '../shared/workText.ts';
import type { LogReviewResult } from './compute.ts';
import type { LogReviewInput } from './fields.ts';
import { said } from './words.ts';

const MOST_SETS = 12;

/** Ways on: the hours of the muscles of the last session, and the sets of the lift elsewhere. */
export function nextOf(input: LogReviewInput, result: LogReviewResult): readonly NextLink[] {
  const { evidence, log } = result;
  const date = evidence.at(-1)?.date ?? input.on;
  const work = workOn(log.sets, date);
  const sets = setTexts(evidence, input.on);
  const { show, window } = input;
  const gear = { ...input, gear: gearOfCounts(evidence.at(-1)?.counts) };
  return [
    ...(work === ''
      ? []
      : [
          {
            calculator: 'next-date',
            label: said.recovery,
            carry: { work, on: date, next: '', plannedOn: input.on },
          },
        ]),
    ...(sets.length === 0
      ? []
      : [
          {
            calculator: 'load-for-window',
            label: said.window,
            carry: { sets: sets.join('~'), window: windowText(window), show, ...gearTexts(gear) },
          },
          ...(gear.gear === 'stack'
            ? []
            : [
                {
                  calculator: 'strength-from-sets',
                  label: said.strength,
                  carry: { sets: sets.map((set) => `${set}_78kg`).join('~'), show },
                },
              ]),
        ]),
  ];
}

/** What was trained on a date, exercise by exercise, as far as the library knows it. */
function workOn(log: readonly LoggedSet[], date: string): string {
  const onDate = log.filter((set) => set.date === date && set.side !== 'right');
  const names = [...new Set(onDate.map(({ exercise }) => exercise))].filter((name) =>
    reviewLifts.some(({ id }) => id === name),
  );
  return names
    .slice(0, MOST_SETS)
    .map((name) => {
      const own = onDate.filter(({ exercise }) => exercise === name);
      const left = Math.min(...own.map(leftOf));
      return workText(name, own.length, { left, stages: 0 });
    })
    .join('~');
}

function leftOf({ end }: LoggedSet): number {
  if (end?.kind === 'reserve') return end.repsLeft;
  return end?.kind === 'more' ? end.atLeast : 0;
}

/** The newest sets with a weight alone, as rows of the calculators that ask for sets. */
function setTexts(evidence: readonly LoggedSet[], on: string): readonly string[] {
  return evidence
    .filter(({ load, counts, reps }) => counts !== 'added' && load.value >= 2 && reps <= 100)
    .slice(-MOST_SETS)
    .map((set) => {
      const { load, reps, tempo = '', end, date } = set;
      const ended =
        end?.kind === 'failure'
          ? 'failure'
          : end?.kind === 'reserve'
            ? (ENDED[Math.round(end.repsLeft)] ?? '4')
            : 'more';
      return [loadText(load), reps, tempo, ended, dayNumber(on) - dayNumber(date)].join('_');
    });
}

function gearOfCounts(counts: LoggedSet['counts'] | undefined): GearInput['gear'] {
  if (counts === 'stack') return 'stack';
  return counts === 'each-hand' ? 'dumbbells' : 'bar';
}

const ENDED = ['failure', '1', '2', '3', '4'] as const;
