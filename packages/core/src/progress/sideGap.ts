import { requireNumber } from '../basis/index.ts';
import { generalCurve, type RepCurve, shareForReps } from '../strength/index.ts';
import type { LiftSession } from './LiftSession.ts';
import { topSets } from './topSets.ts';

/** How far apart the two sides are, in a row of sessions. */
export interface SideGap {
  readonly kind: 'gap';
  readonly weaker: 'left' | 'right' | 'neither';
  /** Repetitions of the stronger less those of the weaker side, in the last session. */
  readonly reps: number;
  /** The same as strength: percent that the stronger side is ahead, by the rep curve. */
  readonly percent: number;
  /** `ordinary`: up to about 15 %, and not growing. `large`, `growing`: to be looked at. */
  readonly standing: 'ordinary' | 'large' | 'growing';
  readonly says: string;
}

/** A gap in strength up to this is found in most people. */
const ORDINARY_PERCENT = 15;
/** Percent by which the gap has to widen over three sessions or more to count as growing. */
const GROWTH_PERCENT = 3;

/**
 * Whether the two sides drift apart. The weaker side goes first and sets the count; the load rises
 * when it reaches the top of the window. No extra sets for one side as a rule.
 *
 * @param sessions oldest first; those without two sides are passed over.
 * @returns `no-sides` when no session has both.
 * @throws RangeError for repetitions below 0.
 * @example
 * ```ts
 * import { sideGap } from '@windlass/core/progress';
 * sideGap([]); // { kind: 'no-sides' }
 * ```
 */
export function sideGap(
  sessions: readonly LiftSession[],
  curve: RepCurve = generalCurve,
): SideGap | { readonly kind: 'no-sides' } {
  const gaps = sessions.flatMap((session) => {
    const sides = topSets(session).sets.find((set) => set.sides)?.sides;
    return sides ? [gapOf(sides, curve)] : [];
  });
  const last = gaps.at(-1);
  if (last === undefined) return { kind: 'no-sides' };
  const recent = gaps.slice(-3);
  const first = recent[0] ?? last;
  const isGrowing =
    recent.length === 3 &&
    recent.every(
      (gap, i) => i === 0 || gap.signed * last.sign > (recent[i - 1]?.signed ?? 0) * last.sign,
    ) &&
    (last.signed - first.signed) * last.sign >= GROWTH_PERCENT;
  const percent = Math.abs(last.signed);
  const standing = isGrowing ? 'growing' : percent > ORDINARY_PERCENT ? 'large' : 'ordinary';
  return {
    kind: 'gap',
    weaker: last.sign > 0 ? 'left' : last.sign < 0 ? 'right' : 'neither',
    reps: last.reps,
    percent,
    standing,
    says: WORDS[standing],
  };
}

const WORDS: Readonly<Record<SideGap['standing'], string>> = {
  ordinary:
    'A stable gap up to about 15 % without pain is ordinary: weaker side first, and the other matches it.',
  large: 'The gap is larger than usual: weaker side first, and ask a clinician if there is pain.',
  growing:
    'The gap grows from session to session: have it looked at by a clinician, with or without pain.',
};

/** Positive where the right side is ahead. */
function gapOf({ left, right }: { left: number; right: number }, curve: RepCurve) {
  requireNumber('sideGap', 'left', left, 0);
  requireNumber('sideGap', 'right', right, 0);
  const share = (reps: number) => shareForReps(Math.max(1, reps), curve);
  const signed = 100 * (share(left) / share(right) - 1);
  return { signed, sign: Math.sign(right - left), reps: Math.abs(right - left) };
}
