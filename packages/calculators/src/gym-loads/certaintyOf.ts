import type { Certainty } from '../contract/Answer.ts';
import { distanceWords, loadWords } from '../shared/loadWords.ts';
import { formatNumber } from '../ui/formatNumber.ts';
import type { GymResult } from './compute.ts';
import type { GymInput } from './fields.ts';
import { largestOf, ORDINARY } from './loadJumps.ts';
import { numberWords } from './numberWords.ts';
import { said } from './words.ts';

/** How near it comes, and how large the step above it is. */
export function certaintyOf(input: GymInput, result: GymResult): Certainty {
  const { list, chosen } = result;
  const says =
    chosen === null
      ? allSteps(input, result)
      : [distance(input, result), rangeWords(input, result), up(input, result)];
  const known = list.standing === 'relative' ? [said.platesOnly] : [];
  return { kind: 'exact', says: [...known, ...says].filter((one) => one !== '').join(' ') };
}

function distance({ show }: GymInput, { chosen }: GymResult): string {
  if (chosen === null) return '';
  const off = distanceWords(chosen.reached, chosen.wish, show);
  return off === '' ? said.exact : said.off(off);
}

function rangeWords({ show }: GymInput, { chosen }: GymResult): string {
  const range = chosen?.load.range;
  return range ? said.range(loadWords(range.low, show), loadWords(range.high, show)) : '';
}

function up({ show }: GymInput, { chosen }: GymResult): string {
  const step = chosen?.up;
  if (!step) return '';
  if (step.kind === 'none') return said.heaviestHere;
  const words = step.size === 'ordinary' ? said.nextUp : said.nextUpLarge;
  return words(numberWords(step.to, show), percentWords(step.percent));
}

function allSteps({ show }: GymInput, { jumps, list }: GymResult): readonly string[] {
  const largest = largestOf(jumps);
  if (largest === undefined) return [said.onlyOne];
  const names = [largest.from, largest.to].map((load) => numberWords(load, show));
  const over = jumps.filter(({ percent }) => percent > ORDINARY).length;
  return [
    said.largest(names[0] ?? '', names[1] ?? '', percentWords(largest.percent)),
    said.over(over, list.loads.length - 1),
  ];
}

/** `16.7 %`. */
export function percentWords(percent: number): string {
  return `${formatNumber(percent, percent < 100 ? 1 : 0)}\u00a0%`;
}
