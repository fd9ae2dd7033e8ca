import type { Seeded } from './seeded.ts';

/**
 * A lifter made of published figures alone, without any code or formula of the library: counts by
 * straight lines through printed tables, errors by the sizes that were measured.
 */
export interface SimulatedLifter {
  /** Kilograms that can just be lifted once, free of the day's form. */
  readonly oneRepMaxKg: () => number;
  /** Days go by: strength wanders. */
  readonly wait: (days: number) => void;
  /** A new day: its form. */
  readonly wake: () => void;
  /** The form of the day, as a factor. */
  readonly form: () => number;
  /** Whole repetitions to failure, with an error of its own or a given one. */
  readonly fail: (loadKg: number, error?: number) => number;
  /** The load that the lifter would try for a count, on a grid of 2.5 kg. */
  readonly choose: (reps: number) => number;
  /** What the lifter says is left, when so many are. */
  readonly say: (left: number) => number;
}

/** Percent of the one-rep max and mean count: general table to 70, machine bench press below. */
const TABLE: readonly (readonly [number, number])[] = [
  [110, -3],
  [100, 1],
  [95, 3],
  [90, 5],
  [85, 7],
  [80, 10],
  [75, 12],
  [70, 15],
  [60, 20.6],
  [40, 36.5],
  [15, 85],
];

/** Standard error of a repeated count: 0.7 at 90 % (about 5) and 1.1 at 70 % (about 15). */
const repeatError = (mean: number) => 0.5 + 0.04 * Math.max(0, mean);

/** Between lifts and people together, counts spread by a log SD of about 0.45. */
const BETWEEN = 0.45;
/** Nobody follows the mean table: from 80 to 65 % a person's count tilts by 7 %. */
const TILT = 0.07;
/** Day to day, within a test-retest coefficient of variation of 4.2 %. */
const FORM = 0.025;
/** 32 % in 18 weeks was seen at most in trained groups; weeks without a trend wander far less. */
const WANDER = 0.011;

/** A lifter around 80 kg, from a seeded source. */
export function simulatedLifter({ normal }: Seeded): SimulatedLifter {
  let usual = 80 * Math.exp(0.35 * normal());
  let form = 1;
  const endurance = Math.exp(BETWEEN * normal());
  const tilt = TILT * normal();
  const mean = (loadKg: number, today: number) => {
    const percent = (100 * loadKg) / today;
    return 1 + endurance * Math.exp((tilt * (80 - percent)) / 15) * (read(percent) - 1);
  };
  return {
    oneRepMaxKg: () => usual,
    form: () => form,
    wait: (days) => {
      usual *= Math.exp(WANDER * Math.sqrt(days) * normal());
    },
    wake: () => {
      form = Math.exp(FORM * normal());
    },
    fail: (loadKg, error = normal()) => {
      const reps = mean(loadKg, usual * form);
      return Math.max(0, Math.round(reps + repeatError(reps) * error));
    },
    choose: (reps) => {
      let loadKg = usual;
      while (mean(loadKg, usual) < reps) loadKg *= 0.995;
      return Math.max(5, 2.5 * Math.round((loadKg * Math.exp(0.05 * normal())) / 2.5));
    },
    say: (left) => {
      // people say 0.95 too few, give or take more the further they are from failure
      const said = Math.round(left - 0.95 + (0.7 + 0.25 * left) * normal());
      return Math.max(0, said);
    },
  };
}

/** Straight lines between the printed points, and beyond the ends. */
function read(percent: number): number {
  const after = Math.max(
    1,
    TABLE.findIndex(([point]) => point <= percent),
  );
  const index = percent < 15 ? TABLE.length - 1 : after;
  const [x0, y0] = TABLE[index - 1] as readonly [number, number];
  const [x1, y1] = TABLE[index] as readonly [number, number];
  return y0 + ((y1 - y0) * (percent - x0)) / (x1 - x0);
}
