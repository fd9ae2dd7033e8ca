import { bad, good, type Outcome, type Problem } from '../basis/index.ts';
import { checkTempo } from './checkTempo.ts';
import { phasesInOrder, phaseWords } from './phases.ts';
import { splitTempo } from './splitTempo.ts';
import type { Tempo, TempoOrder, TempoPhase } from './Tempo.ts';

/** How {@link parseTempo} reads a tempo. */
export interface ParseTempoOptions {
  /** Which part comes first; `lower-first` when left out. */
  readonly order?: TempoOrder;
}

/** A tempo that was read, and which phases its parts were taken for. */
export interface TempoReading {
  readonly tempo: Tempo;
  /** The phases that were written, first to last; the one that is missing from three counts as 0 s. */
  readonly phasesRead: readonly TempoPhase[];
}

/**
 * Reads a tempo as people write it: `30X0`, `31×1`, `4-0-1-0`, `3:1:1:0`, `5 0 5 0`, `2,5/0/1/0`.
 *
 * Lowering, pause after lowering, lift, pause after lifting, in seconds; with `lift-first` the
 * lift and its pause come first. The order is the caller's choice and is never guessed. Three
 * parts leave the last pause out. `X`, `x` or `×` is a lift as fast as possible and stands only at
 * the lift. Without separators each part is one digit; two digits and decimals need separators,
 * and where point or comma is the separator there are no decimals.
 *
 * Problems: `tempo.empty`, `tempo.parts`, `tempo.not-seconds`, `tempo.fast-only-lift`, and those
 * of {@link checkTempo}.
 *
 * @example
 * ```ts
 * import { parseTempo } from '@windlass/core/tempo';
 * const reading = parseTempo('30X0');
 * reading.ok && reading.value.tempo; // { lowerSeconds: 3, pauseAfterLowerSeconds: 0, liftSeconds: 'X', pauseAfterLiftSeconds: 0 }
 * const three = parseTempo('321');
 * three.ok && three.value.phasesRead; // ['lower', 'pause-after-lower', 'lift']
 * parseTempo('0000').ok; // false
 * ```
 */
export function parseTempo(
  text: string,
  { order = 'lower-first' }: ParseTempoOptions = {},
): Outcome<TempoReading> {
  const parts = splitTempo(text);
  if (parts.length === 0) {
    const message = 'Write a tempo, for example 3-0-1-0, or 3-0-X-0 for a fast lift.';
    return bad({ code: 'tempo.empty', path: [], message, received: text });
  }
  if (parts.length !== 3 && parts.length !== 4) {
    return bad({
      code: 'tempo.parts',
      path: [],
      message: `Write three or four parts, for example 3-0-1-0, or 10-0-2.5-0 with separators where a part is not one digit; this has ${parts.length}.`,
      params: { parts: parts.length },
      received: text,
    });
  }
  const phasesRead = phasesInOrder(order).slice(0, parts.length);
  const problems = phasesRead.flatMap((phase, index) => partProblems(phase, parts[index] ?? ''));
  if (problems.length > 0) return bad(...problems);
  const partOf = (phase: TempoPhase) => parts[phasesRead.indexOf(phase)] ?? '0';
  const checked = checkTempo({
    lowerSeconds: secondsIn(partOf('lower')),
    pauseAfterLowerSeconds: secondsIn(partOf('pause-after-lower')),
    liftSeconds: isFast(partOf('lift')) ? 'X' : secondsIn(partOf('lift')),
    pauseAfterLiftSeconds: secondsIn(partOf('pause-after-lift')),
  });
  return checked.ok
    ? good({ tempo: checked.value, phasesRead })
    : bad(...checked.problems.map((problem) => ({ ...problem, path: [], received: text })));
}

function isFast(part: string): boolean {
  return /^[xX×]$/.test(part);
}

function secondsIn(part: string): number {
  return Number(part.replace(',', '.'));
}

function partProblems(phase: TempoPhase, part: string): readonly Problem[] {
  if (/^\d+(?:[.,]\d+)?$/.test(part) || (isFast(part) && phase === 'lift')) return [];
  const name = phaseWords[phase];
  // An X at the lowering stands where the other order has its lift.
  const otherOrder = phase === 'lower' ? ' If this part is the lift, choose the other order.' : '';
  const [code, message] = isFast(part)
    ? ['tempo.fast-only-lift', `Give the ${name} in seconds; X is for the lift only.${otherOrder}`]
    : [
        'tempo.not-seconds',
        `Give the ${name} in seconds, for example 3${phase === 'lift' ? ', or X' : ''}, not "${part}".`,
      ];
  return [{ code, path: [], message, params: { phase }, received: part }];
}
