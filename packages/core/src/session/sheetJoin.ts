import type { Unit } from '../load/index.ts';
import type { JoinedLift } from './JoinedLifts.ts';
import { loadWords } from './loadingWords.ts';
import type { SheetJoin } from './Sheet.ts';

/** How a lift is done in rounds with its neighbour, in words. */
export function sheetJoin(join: JoinedLift, unit: Unit, locale: string): SheetJoin {
  const { kind, place, transitionSeconds, waits } = join;
  return {
    kind,
    place,
    transitionSeconds,
    ...(waits.length > 0 && { waitSeconds: Math.ceil(Math.max(...waits)) }),
    notes: effectWords(join, unit, locale),
  };
}

function effectWords({ effect }: JoinedLift, unit: Unit, locale: string): readonly string[] {
  if (!effect) return [];
  const { usual, loadShare, sharePerRep, cautions } = effect;
  const percent = (share: number, digits = 0) =>
    `${(100 * share).toLocaleString(locale, { maximumFractionDigits: digits })}\u00a0%`;
  const band = `${percent(loadShare.low)} to ${percent(loadShare.high)} in ${Math.round(10 * loadShare.level)} of 10`;
  return [
    `Without the isolation set: ${loadWords(usual.choice.shown, unit, locale)}. After it about ${percent(loadShare.likely)} of what is moved there (${band}).`,
    `After the first try change the load by ${percent(sharePerRep, 1)} for each rep more or fewer than wanted.`,
    ...cautions.map(({ what, instead }) => `${what} ${instead}`),
  ];
}
