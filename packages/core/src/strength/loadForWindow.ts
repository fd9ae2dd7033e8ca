import { type Band, requireNumber } from '../basis/index.ts';
import { forecastReps } from './forecastReps.ts';
import { kappaAtTempo } from './kappaAtTempo.ts';
import { kappaBand } from './kappaBand.ts';
import type { HasLoad, LoadChance } from './LoadChance.ts';
import type { StrengthPosterior } from './StrengthPosterior.ts';
import { type RepWindow, windowShares } from './windowShares.ts';

/** What is asked: a load among these, to fail inside this window at this pace. */
export interface WindowQuestion<C extends HasLoad> {
  readonly posterior: StrengthPosterior;
  /** Every load that can be made, in any order. Loads of 0 or less are passed over. */
  readonly choices: readonly C[];
  readonly window: RepWindow;
  readonly secondsPerRep: number;
  /** Share of fresh strength left, above 0 to 1: less for a second set or a second lift. */
  readonly capacity?: number;
  readonly level?: number;
}

/** The loads around a rep window, or why none fits. */
export type WindowAnswer<C extends HasLoad> =
  | {
      readonly kind: 'found';
      /** Largest chance of failure inside the window; the lighter of equals. */
      readonly best: LoadChance<C>;
      /** The heaviest load that fails before the window in at most one set of five. */
      readonly careful: LoadChance<C> | undefined;
      readonly lighter: LoadChance<C> | undefined;
      readonly heavier: LoadChance<C> | undefined;
      readonly asked: Band;
      readonly all: readonly LoadChance<C>[];
    }
  | {
      readonly kind: 'none-near';
      readonly reason: 'all-too-heavy' | 'all-too-light' | 'gap';
      /** The nearest on each side; at least one. */
      readonly lighter: LoadChance<C> | undefined;
      readonly heavier: LoadChance<C> | undefined;
      readonly asked: Band;
      readonly all: readonly LoadChance<C>[];
    }
  | { readonly kind: 'no-loads' };

/** A careful load may end the set before the window this often. */
const CAREFUL_BEFORE = 0.2;

/**
 * The load that most probably fails inside a rep window at a pace, among those that can be made.
 *
 * Each load has its chance of failing inside, before and beyond the window, from `forecastReps`.
 * `asked` is what the window asks of the load as a share of today's one-rep max, over the believed
 * kappas. `careful` is the load for a first try when the belief is wide. None is near when no load's
 * likely count lies inside: all too heavy, all too light, or the window falls between two.
 *
 * @throws RangeError for a window outside 1 to 200, a pace outside 0.2 to 120 s or a capacity
 * outside 0 to 1.
 * @example
 * ```ts
 * import { kg } from '@windlass/core/load';
 * import { generalCurve, loadForWindow, priorFor, strengthFrom } from '@windlass/core/strength';
 * const belief = strengthFrom({
 *   sets: [{ load: kg(100), reps: 5, end: { kind: 'failure' }, day: 0, secondsPerRep: 3 }],
 *   prior: priorFor(generalCurve),
 *   today: 0,
 * });
 * if (belief.kind !== 'posterior') throw new Error('no sets');
 * const answer = loadForWindow({
 *   posterior: belief,
 *   choices: [90, 95, 100, 105].map((value) => ({ load: kg(value) })),
 *   window: { minReps: 4, maxReps: 6 },
 *   secondsPerRep: 3,
 * });
 * answer.kind === 'found' && answer.best.reps.likely; // 5
 * ```
 */
export function loadForWindow<C extends HasLoad>(question: WindowQuestion<C>): WindowAnswer<C> {
  const { window, secondsPerRep, level = 0.8, capacity = 1 } = question;
  requireNumber('loadForWindow', 'minReps', window.minReps, 1, 200);
  requireNumber('loadForWindow', 'maxReps', window.maxReps, window.minReps, 200);
  const all = question.choices
    .filter((choice) => choice.load > 0)
    .sort((a, b) => a.load - b.load)
    .map((choice) => chanceOf(choice, question));
  if (all.length === 0) return { kind: 'no-loads' };
  const asked = sharesAsked(question.posterior, window, secondsPerRep, capacity, level);
  const within = all.filter((one) => isInside(one.reps.likely, window));
  if (within.length === 0) return noneNear(all, window, asked);
  const best = all.reduce((top, one) => (one.inside > top.inside + 1e-9 ? one : top));
  const place = all.indexOf(best);
  return {
    kind: 'found',
    best,
    careful: all.findLast((one) => one.before <= CAREFUL_BEFORE),
    lighter: all[place - 1],
    heavier: all[place + 1],
    asked,
    all,
  };
}

function chanceOf<C extends HasLoad>(choice: C, question: WindowQuestion<C>): LoadChance<C> {
  const { posterior, window, secondsPerRep, capacity = 1, level = 0.8 } = question;
  const { load } = choice;
  const { chances, ...rest } = forecastReps(posterior, { load, secondsPerRep, capacity }, level);
  const sum = (from: number, to: number) =>
    chances.slice(from, to).reduce((total, chance) => total + chance, 0);
  return {
    choice,
    before: sum(0, window.minReps),
    inside: sum(window.minReps, window.maxReps + 1),
    beyond: sum(window.maxReps + 1, chances.length),
    ...rest,
  };
}

function noneNear<C extends HasLoad>(
  all: readonly LoadChance<C>[],
  window: RepWindow,
  asked: Band,
): WindowAnswer<C> {
  const lighter = all.findLast((one) => one.reps.likely > window.maxReps);
  const heavier = all.find((one) => one.reps.likely < window.minReps);
  const reason =
    lighter === undefined ? 'all-too-heavy' : heavier === undefined ? 'all-too-light' : 'gap';
  return { kind: 'none-near', reason, lighter, heavier, asked, all };
}

function isInside(reps: number, { minReps, maxReps }: RepWindow): boolean {
  return reps >= minReps && reps <= maxReps;
}

/** The middle of the window as a share of the one-rep max, over the believed kappas. */
function sharesAsked(
  posterior: StrengthPosterior,
  window: RepWindow,
  secondsPerRep: number,
  capacity: number,
  level: number,
): Band {
  const kappa = kappaBand(posterior, level);
  const at = (value: number) => {
    const atPace = kappaAtTempo(value, secondsPerRep).kappa.likely;
    return windowShares(window, { kappa: atPace, alpha: posterior.alpha }, capacity).middle;
  };
  return { low: at(kappa.low), likely: at(kappa.likely), high: at(kappa.high), level };
}
