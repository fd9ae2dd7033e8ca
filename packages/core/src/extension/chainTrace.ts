import type { Band } from '../basis/index.ts';
import { type CapacityStep, type CapacityTrace, capacityTrace } from '../capacity/index.ts';
import type { ChainDraw } from './ChainDraw.ts';
import type { ChainForecastInput } from './ChainForecast.ts';
import { chainThresholds } from './chainThresholds.ts';
import { DRAW_DIMENSIONS, drawChain } from './drawChain.ts';
import { runChain } from './runChain.ts';
import type { HoldStage } from './Stage.ts';

/** A line that the capacity crosses, as wide as it is uncertain. */
export interface ThresholdBand {
  readonly id: 'lift' | 'hold' | 'lower';
  readonly capacity: Band;
}

/** A chain as the capacity chart draws it. */
export interface ChainTrace {
  /** A lifter who tires fast, the likely one, one who tires slowly; apart by endurance only. */
  readonly low: CapacityTrace;
  readonly likely: CapacityTrace;
  readonly high: CapacityTrace;
  /** What the load asks for: to be held where the chain holds it, at full effect without a hold. */
  readonly lines: readonly ThresholdBand[];
}

/**
 * Capacity over the seconds of a chain, and the lines of lifting, holding and lowering it crosses.
 *
 * The lines are those of the load at the start; a stage with a lighter load lowers them all.
 *
 * @param input as for `forecastChain`; the seed is not used.
 * @throws RangeError for an argument out of range.
 * @example
 * ```ts
 * import { findExercise } from '@windlass/core/anatomy';
 * import { chainTrace } from '@windlass/core/extension';
 * const found = findExercise('chin-up');
 * const trace =
 *   found.kind === 'found' &&
 *   chainTrace({
 *     stages: [{ kind: 'lift' }, { kind: 'hold', at: 'contracted', maxSeconds: 30 }],
 *     exercise: found.exercise,
 *     intensity: 0.75,
 *     secondsPerRep: 6,
 *     seed: 1,
 *   });
 * trace && trace.lines.map((line) => line.id); // ['lift', 'hold', 'lower']
 * trace && trace.likely.crossings[0]?.line; // 'lift'
 * ```
 */
export function chainTrace(input: ChainForecastInput): ChainTrace {
  const at = (share: number) => drawChain(input, middle.with(0, share));
  const draw = at(0.5);
  return {
    low: traceOf(input, at(0.1)),
    likely: traceOf(input, draw),
    high: traceOf(input, at(0.9)),
    lines: linesOf(input),
  };
}

const middle: readonly number[] = Array.from({ length: DRAW_DIMENSIONS }, () => 0.5);
const EXERCISE = 'exercise';
const shares = { [EXERCISE]: 1 };

function traceOf(input: ChainForecastInput, draw: ChainDraw): CapacityTrace {
  const start = input.fatigue ?? { fast: 0, slow: 0 };
  const steps = runChain(input.stages, start, draw, input).flatMap(({ work }) =>
    work.map((piece): CapacityStep => (piece.kind === 'rest' ? piece : { ...piece, shares })),
  );
  const lines = Object.entries(thresholdsOf(input, draw)).map(([id, capacity]) => ({
    id,
    capacity,
  }));
  return capacityTrace({ shares, steps, lines, start: { [EXERCISE]: start } });
}

function linesOf(input: ChainForecastInput): readonly ThresholdBand[] {
  const at = (axis: number, share: number) =>
    thresholdsOf(input, drawChain(input, middle.with(axis, share)));
  const likely = thresholdsOf(input, drawChain(input, middle));
  const band = (id: ThresholdBand['id'], axis: number): ThresholdBand => {
    const ends = [at(axis, 0.1)[id], at(axis, 0.9)[id]].sort((a, b) => a - b) as [number, number];
    return { id, capacity: { low: ends[0], likely: likely[id], high: ends[1], level: 0.8 } };
  };
  return [band('lift', 2), band('hold', 3), band('lower', 4)];
}

function thresholdsOf({ stages, exercise }: ChainForecastInput, draw: ChainDraw) {
  const hold = stages.find((stage): stage is HoldStage => stage.kind === 'hold');
  const { momentArm = 1 } = exercise.holds.find((position) => position.at === hold?.at) ?? {};
  return chainThresholds({ ...draw, momentArm });
}
