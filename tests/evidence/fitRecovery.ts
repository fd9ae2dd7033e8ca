// Fits the constants of the recovery model to published bounds. Run: node tests/evidence/fitRecovery.ts
import { argv } from 'node:process';
import { fileURLToPath } from 'node:url';
import { normalBelow as normal } from '../../packages/core/src/basis/index.ts';
import { recoveryModel } from '../../packages/core/src/recovery/recoveryModel.ts';
import { minimize } from './minimize.ts';
import { readReference } from './readReference.ts';
import { type Bout, bouts } from './recoveryBouts.ts';

/** Constants on the scale of ln hours; the last three are offsets of measures against repetitions. */
export interface RecoveryFit {
  readonly base: number;
  readonly exponent: number;
  readonly reserve: number;
  readonly lowering: number;
  readonly unaccustomed: number;
  readonly trained: number;
  readonly force: number;
  readonly work: number;
  readonly jump: number;
}

/**
 * What was held likely before seeing the rows: mean and standard deviation. They keep a constant
 * that only one-sided bounds speak of from running away.
 */
const beforehand: { readonly [name in keyof RecoveryFit]: readonly [number, number] } = {
  base: [3, 1],
  exponent: [0.6, 0.2],
  reserve: [0.5, 0.25],
  lowering: [0.3, 0.3],
  unaccustomed: [0.6, 0.3],
  trained: [-0.1, 0.1],
  force: [0, 0.25],
  work: [0.1, 0.25],
  jump: [0.1, 0.25],
};
const names = Object.keys(beforehand) as (keyof RecoveryFit)[];

/** Spread of group results around the model, ln hours: about a third of the hours. */
const GROUP_SD = 0.35;

/**
 * Largest posterior density: each row says that ln hours lies between its bounds, so it adds the
 * log of the normal probability of that interval.
 */
export function fitRecovery(): RecoveryFit {
  const rows = readReference('recovery_time_course').rows;
  const cost = (point: readonly number[]): number => {
    const fit = named(point);
    const misfit = bouts.reduce((sum, bout) => {
      const middle = logHours(fit, bout);
      const [, , , , , lastImpaired, firstRecovered] = rows[bout.row] ?? [];
      const below = (hours: unknown, otherwise: number) =>
        typeof hours === 'number' ? normal((Math.log(hours) - middle) / GROUP_SD) : otherwise;
      return sum - Math.log(Math.max(1e-12, below(firstRecovered, 1) - below(lastImpaired, 0)));
    }, 0);
    return names.reduce((sum, name) => {
      const [mean, sd] = beforehand[name];
      return sum + ((fit[name] - mean) / sd) ** 2 / 2;
    }, misfit);
  };
  return named(
    minimize(
      cost,
      names.map((name) => beforehand[name][0]),
    ),
  );
}

/** Spread between people, ln hours: likeliest normal for 4, 3, 1 and 2 of ten by 48, 72, 96 h and later. */
export function fitSpread(): { readonly middle: number; readonly sd: number } {
  const counts = [4, 3, 1, 2];
  const limits = [48, 72, 96].map(Math.log);
  const cost = ([middle = 0, logSd = 0]: readonly number[]): number => {
    const below = [0, ...limits.map((limit) => normal((limit - middle) / Math.exp(logSd))), 1];
    return counts.reduce(
      (sum, count, i) => sum - count * Math.log((below[i + 1] ?? 1) - (below[i] ?? 0)),
      0,
    );
  };
  const [middle = 0, logSd = 0] = minimize(cost, [4, -0.5]);
  return { middle, sd: Math.exp(logSd) };
}

function logHours(fit: RecoveryFit, bout: Bout): number {
  const { indirect, pastFailure, regions, reserveLostWhenNew } = recoveryModel;
  const isNew = bout.status === 'new' ? 1 : 0;
  const dose =
    bout.sets *
    (bout.helps ? indirect.weight : 1) *
    (1 + pastFailure.addedPerStage * (bout.stagesPastFailure ?? 0));
  return (
    fit.base +
    fit.exponent * Math.log(dose) -
    fit.reserve * (bout.repsInReserve ?? 0) * (1 - reserveLostWhenNew * isNew) +
    (bout.loweringHeavy ? fit.lowering : 0) +
    isNew * (fit.unaccustomed + Math.log(regions.factors[bout.muscle] ?? 1)) +
    (bout.status === 'trained' ? fit.trained : 0) +
    (bout.measure === 'repetitions' ? 0 : fit[bout.measure])
  );
}

function named(point: readonly number[]): RecoveryFit {
  const values = names.map((name, i) => [name, point[i] ?? 0] as const);
  return Object.fromEntries(values) as Record<keyof RecoveryFit, number>;
}

if (argv[1] === fileURLToPath(import.meta.url)) console.log(fitRecovery(), fitSpread());
