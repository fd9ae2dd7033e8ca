import {
  jointFatigueRates,
  type StudiedJoint,
  sustainedSeconds,
} from '../../packages/core/src/capacity/index.ts';
import { forcedRepHelp } from '../../packages/core/src/extension/index.ts';
import { progressRules } from '../../packages/core/src/progress/index.ts';
import { recoveryModel } from '../../packages/core/src/recovery/index.ts';
import { evidenceModel, oneRepMaxEquations } from '../../packages/core/src/strength/index.ts';
import { readReference } from './readReference.ts';
import { type PublishedRow, readRows } from './readRows.ts';

/** Figures that the library repeats from a publication, or works out from its formula. */
export interface CopiedFigures {
  readonly table: string;
  readonly says: string;
  readonly pairs: readonly (readonly [library: number, published: number])[];
  /** Half of the last digit printed. */
  readonly within: number;
}

/** Copies of published figures: they show that nothing was mistyped, and prove nothing else. */
export function copiedFigures(): readonly CopiedFigures[] {
  return [
    {
      table: 'one-rm-equations-test-vectors',
      says: 'twelve one-rep-max equations at 1 to 20 repetitions, percent of the one-rep max',
      pairs: equationVectors(),
      within: 0.000_51,
    },
    {
      table: 'one-rm-equations-verified',
      says: 'coefficients of the eight equations that were read in their papers',
      pairs: equationCoefficients(),
      within: 1e-12,
    },
    {
      table: 'tcc_parameters_joint',
      says: 'fatigue and recovery rates of seven joints, per second',
      pairs: readRows('tcc_parameters_joint').flatMap((row) => [
        [jointFatigueRates[jointOf(row)].fatiguePerSecond, row.number('F')] as const,
        [jointFatigueRates[jointOf(row)].recoveryPerSecond, row.number('R')] as const,
      ]),
      within: 1e-12,
    },
    {
      table: 'tcc_sustained_oracle',
      says: 'closed form of the time to failure, seconds, seven joints at 10 to 90 %',
      pairs: enduranceTimes(),
      within: 0.050_01,
    },
    {
      table: 'forced_rep_assistance',
      says: 'quartiles of the peak help on two forced repetitions, percent of the load',
      pairs: readRows('forced_rep_assistance').flatMap((row, index) => {
        const help = forcedRepHelp[index];
        return [
          [100 * (help?.low ?? 0), row.number('q1')] as const,
          [100 * (help?.likely ?? 0), row.number('median')] as const,
          [100 * (help?.high ?? 0), row.number('q3')] as const,
        ];
      }),
      within: 0.050_01,
    },
    {
      table: 'rir-accuracy',
      says: 'repetitions that people have beyond what they say',
      pairs: [
        [evidenceModel.reserve.value.bias, readRows('rir-accuracy')[0]?.number('value') ?? 0],
      ],
      within: 1e-12,
    },
    {
      table: 'set_counting',
      says: 'weight of a set for a muscle that helps',
      pairs: [[recoveryModel.indirect.weight, readRows('set_counting')[1]?.number('value') ?? 0]],
      within: 1e-12,
    },
    {
      table: 'acsm-2009-progression',
      says: 'limits of a step up in load, percent',
      pairs: readRows('acsm-2009-progression').flatMap((row) => [
        [progressRules.stepPercent.smallest, row.number('low')] as const,
        [progressRules.stepPercent.largest, row.number('high')] as const,
      ]),
      within: 1e-12,
    },
  ];
}

/** Names in the table and ids in the library. */
const equationIds: Readonly<Record<string, string>> = {
  Epley: 'epley',
  Brzycki: 'brzycki',
  Lander: 'lander',
  Lombardi: 'lombardi',
  Mayhew: 'mayhew',
  OConner: 'oconner',
  Wathen: 'wathen',
  Adams: 'adams',
  Brown: 'brown',
  Kemmler: 'kemmler',
  Reynolds_chest: 'reynolds-chest-curve',
  Reynolds_leg: 'reynolds-leg-curve',
  'Reynolds chest press 5RM': 'reynolds-chest-5rm',
  'Reynolds leg press 5RM': 'reynolds-leg-5rm',
  'Kemmler (KLW) cubic': 'kemmler',
  'Braith untrained': 'braith-untrained',
  'Braith trained': 'braith-trained',
  'Powerlifter squat 70%': 'powerlifters-squat',
  'Powerlifter bench 70%': 'powerlifters-bench',
  'Powerlifter deadlift 80%': 'powerlifters-deadlift',
};

function equation(name: string) {
  const found = oneRepMaxEquations.find(({ id }) => id === equationIds[name]);
  if (found === undefined) throw new Error(`no equation ${name}`);
  return found;
}

function equationVectors() {
  const { columns } = readReference('one-rm-equations-test-vectors');
  return readRows('one-rm-equations-test-vectors').flatMap((row) =>
    columns.slice(1).map((name) => {
      const percent = 10_000 / equation(name).oneRepMaxKg(100, row.number('reps'));
      return [percent, row.number(name)] as const;
    }),
  );
}

/** Numbers with their signs, exponents of the repetitions left out. */
const coefficients = (formula: string) =>
  (
    formula
      .replace(/^1RM = /, '')
      .replace(/r\^\d/g, 'r')
      .match(/-? ?\d+(?:\.\d+)?(?!RM)/g) ?? []
  ).map((one) => Number(one.replace(' ', '')));

function equationCoefficients() {
  return readRows('one-rm-equations-verified').flatMap((row) => {
    const ours = coefficients(equation(row.text('name')).formula);
    const theirs = coefficients(row.text('formula').replace('w5RM', 'w').replace('w(7-10RM)', 'w'));
    return theirs.map((value, index) => [ours[index] ?? Number.NaN, value] as const);
  });
}

const jointOf = (row: PublishedRow) =>
  (row.text('joint') === 'hand_grip' ? 'grip' : row.text('joint')) as StudiedJoint;

function enduranceTimes() {
  return readRows('tcc_sustained_oracle').flatMap((row) =>
    [1, 2, 3, 4, 5, 6, 7, 8, 9].map((tenths) => {
      const rates = jointFatigueRates[jointOf(row)];
      const answer = sustainedSeconds({ targetLoad: tenths / 10, fatigued: 0, rates });
      const seconds = answer.kind === 'fails' ? answer.seconds : Number.POSITIVE_INFINITY;
      return [seconds, row.number(`tl_0.${tenths}`)] as const;
    }),
  );
}
