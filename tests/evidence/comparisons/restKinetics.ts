import { restCapacity, SLOW_SHARE } from '../../../packages/core/src/capacity/index.ts';
import { around, type Comparison } from '../Comparison.ts';
import { readRows } from '../readRows.ts';

const aside =
  'phosphocreatine is not strength; the two recover alike in this study (r 0.71 to 0.86)';

/** What the fast part of fatigue recovers like. */
export const restKinetics: Comparison = {
  id: 'rest-kinetics',
  title: 'Recovery within minutes',
  compares:
    'Phosphocreatine in the muscle after a 30 s sprint, as a share of what was used, against the share of a loss that the capacity state gives back.',
  tables: ['rest_kinetics'],
  tolerance: {
    rule: '0.1',
    reason: 'About one standard deviation between people of the half-time.',
  },
  unit: 'share given back',
  rows: () => {
    const text = readRows('rest_kinetics')[0]?.text('value') ?? '';
    const [end = 0, early = 0, minutesEarly = 0, late = 0, minutesLate = 0] = (
      text.match(/\d+(?:\.\d+)?/g) ?? []
    ).map(Number);
    return [
      [minutesEarly, early],
      [minutesLate, late],
    ].map(([minutes = 0, percent = 0]) => ({
      label: `${minutes} min after`,
      predicted: givenBack(60 * minutes),
      ...around((percent - end) / (100 - end), 0.1),
      aside,
    }));
  },
};

function givenBack(seconds: number): number {
  const lost = restCapacity({ thigh: { fast: 1 - SLOW_SHARE, slow: SLOW_SHARE } }, seconds).thigh;
  return 1 - (lost?.fast ?? 0) - (lost?.slow ?? 0);
}
