import { exercises } from '../../../packages/core/src/anatomy/index.ts';
import type { Comparison, Figure } from '../Comparison.ts';
import { readRows } from '../readRows.ts';

/** How much more a person can lower than lift. */
export const loweringStrength: Comparison = {
  id: 'lowering-strength',
  title: 'Lowering against lifting',
  compares:
    'Measured one-rep max of lowering divided by that of lifting against the factor of the exercise in the library.',
  tables: ['ecc_con_exercise_1rm', 'ecc_con_meta'],
  tolerance: {
    rule: 'the measured ratio within 10 % of the factor; for pooled ratios the factor within their 95 % interval',
    reason:
      'Ten percent is what the forecast of a set past failure allows between people (1.12 to 1.38 around 1.25), and about two standard errors of a mean ratio over 10 to 12 people who spread by 0.2.',
  },
  unit: 'times the lifting one-rep max',
  rows: () => [...measured(), ...pooled()],
};

const counterparts: Readonly<Record<string, string>> = {
  lat_pulldown: 'cable-pulldown',
  leg_press: 'leg-press',
  bench_press: 'machine-chest-press',
  leg_extension: 'leg-extension',
  military_press: 'machine-shoulder-press',
  leg_curl: 'seated-leg-curl',
};
/** Bench press, curl and squat of the two studies with free weights. */
const freeWeights: Readonly<Record<string, string>> = {
  bench_press: 'barbell-bench-press',
  arm_curl: 'dumbbell-curl',
  back_squat: 'barbell-back-squat',
};

function measured(): readonly Figure[] {
  return readRows('ecc_con_exercise_1rm').map((row) => {
    const free = row.text('doi') !== '10.1519/00124278-200702000-00007';
    const id = (free ? freeWeights : counterparts)[row.text('exercise')] ?? '';
    const women = row.text('sex') === 'F';
    const ratio = row.number('ecc_con_ratio');
    const label = `${row.text('exercise').replaceAll('_', ' ')}, ${free ? 'free weight' : 'machine'}, ${row.number('n')} ${women ? 'women' : 'men'}`;
    return {
      label,
      predicted: factorOf(id),
      observed: ratio,
      allowed: [ratio / 1.1, ratio / 0.9],
      ...(!women && { fitted: true as const }),
      ...(ratio > 2 && {
        aside: 'an outlier of ten women on altered machines; its authors’ table warns of it',
      }),
      ...(women &&
        ratio < 2 && {
          miss: 'One factor for everyone: ten women lowered far more here than men, and more than the pooled 1.47 of women. Too few to set a factor by.',
        }),
    };
  });
}

function factorOf(id: string): number {
  const found = exercises.find((exercise) => exercise.id === id);
  if (found === undefined) throw new Error(`no exercise ${id}`);
  return found.eccentricFactor;
}

function pooled(): readonly Figure[] {
  const groups = readRows('ecc_con_meta').filter((row) => row.has('ci_low'));
  return groups.map((row) => {
    const group = row.text('group');
    const apart = group === 'women' || group === 'older_adults';
    return {
      label: `pooled, ${group.replaceAll('_', ' ')}`,
      predicted: factorOf('leg-extension'),
      observed: row.number('ratio'),
      allowed: [row.number('ci_low'), row.number('ci_high')],
      ...(!apart && { fitted: true as const }),
      ...(apart && {
        miss: 'The factor is the same for both sexes and all ages. Taking less than what these groups have errs towards fewer lowerings.',
      }),
    };
  });
}
