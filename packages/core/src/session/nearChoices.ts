import { toKg } from '../load/index.ts';
import {
  type HasLoad,
  kappaAtTempo,
  kappaBand,
  loadForWindow,
  oneRepMaxKg,
  repsAtShare,
  type WindowQuestion,
} from '../strength/index.ts';

/** A load stays when the ends of the belief bring it within this factor of the window. */
const REACH = 1.5;
/** As many loads are all forecast; of more, one in so many first. */
const FEW = 24;
/** Chances that near the best one are looked at closely: equal to a lifter, and a little more. */
const NEAR_BEST = 0.012;
/** Of the careful load; see `loadForWindow`. */
const CAREFUL_BEFORE = 0.2;

/**
 * The loads among which `loadForWindow` finds the same answer as among all of them.
 *
 * A bar with small plates makes hundreds of loads, and a forecast for each is where planning
 * spends its time. Loads that fail far from the window are left out, but for one on each side; of
 * many that are left, some are forecast and the stretches between them that hold the best or the
 * careful load are taken whole. The chance rises to the best load and falls after it, and the
 * chance of failing too early only rises, so nothing between two others is missed.
 *
 * @param question its choices from the lightest to the heaviest.
 */
export function nearChoices<C extends HasLoad>(question: WindowQuestion<C>): readonly C[] {
  const near = withinReach(question);
  if (near.length <= FEW) return near;
  const stride = Math.floor(Math.sqrt(near.length));
  const isSome = (at: number) => at % stride === 0 || at === near.length - 1;
  const answer = loadForWindow({ ...question, choices: near.filter((_, at) => isSome(at)) });
  if (answer.kind === 'no-loads') return near;
  const { all } = answer;
  const best = Math.max(...all.map(({ inside }) => inside));
  const careful = all.findLastIndex(({ before }) => before <= CAREFUL_BEFORE);
  const likelyAt = all.findIndex(({ reps }) => reps.likely <= question.window.maxReps);
  const close = all.map(
    ({ inside }, at) => inside > best - NEAR_BEST || at === careful || at === likelyAt,
  );
  return near.filter((_, at) => {
    const before = Math.floor(at / stride);
    return isSome(at) || close[before] || close[before + 1];
  });
}

function withinReach<C extends HasLoad>(question: WindowQuestion<C>): readonly C[] {
  const { posterior, choices, window, secondsPerRep, capacity = 1 } = question;
  const max = oneRepMaxKg(posterior, 0.8, 'today');
  const kappa = kappaBand(posterior, 0.8);
  const repsAt = (choice: C, end: 'low' | 'high') => {
    const share = toKg(choice.load) / max[end];
    if (share > capacity) return 0;
    const atPace = kappaAtTempo(kappa[end], secondsPerRep).kappa.likely;
    return repsAtShare(share, { kappa: atPace, alpha: posterior.alpha }, capacity);
  };
  const positive = choices.filter(({ load }) => load > 0);
  const from = positive.findIndex((one) => repsAt(one, 'low') <= REACH * window.maxReps);
  const to = positive.findLastIndex((one) => repsAt(one, 'high') >= window.minReps / REACH);
  if (from < 0) return positive.slice(-2);
  return positive.slice(Math.max(0, from - 2), Math.max(from, to) + 3);
}
