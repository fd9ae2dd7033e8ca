import type { Source } from '../basis/index.ts';

/** Effect size for muscle growth by sets of one exercise in a session, and beyond them by the week. */
const krieger = [
  { sets: 0, effect: 0 },
  { sets: 1, effect: 0.24 },
  { sets: 2.5, effect: 0.34 },
  { sets: 5, effect: 0.44 },
] as const;
const EFFECT_PER_FURTHER_SET = 0.023;

/** What the worth of sets rests on. */
export const setValueSources: readonly Source[] = [
  {
    id: 'krieger-2010',
    citation:
      'Krieger JW. J Strength Cond Res 2010;24(4):1150-1159: effect size 0.24 with one set, 0.34 with two or three, 0.44 with four to six',
    doi: '10.1519/JSC.0b013e3181d4d436',
    standing: 'verified',
  },
  {
    id: 'schoenfeld-2017',
    citation:
      'Schoenfeld BJ, Ogborn D, Krieger JW. J Sports Sci 2017;35:1073-1082: 0.023 for each further weekly set',
    doi: '10.1080/02640414.2016.1210197',
    standing: 'verified',
  },
];

/**
 * What so many counted sets of a muscle are worth, for choosing between sets of one session: each
 * further one is worth less. Straight lines through published effect sizes (0.24, 0.34 and 0.44 for
 * 1, 2 to 3 and 4 to 6 sets; 0.023 a set beyond); an order of worth, no promise of growth.
 *
 * @param countedSets 0 or more; 1 for a prime mover, 0.5 for a helper.
 */
export function setValue(countedSets: number): number {
  for (let knot = 1; knot < krieger.length; knot += 1) {
    const [before, after] = [krieger[knot - 1], krieger[knot]];
    if (!before || !after || countedSets > after.sets) continue;
    const share = (countedSets - before.sets) / (after.sets - before.sets);
    return before.effect + share * (after.effect - before.effect);
  }
  const last = krieger[krieger.length - 1];
  return (last?.effect ?? 0) + EFFECT_PER_FURTHER_SET * (countedSets - (last?.sets ?? 0));
}
