import type { Source } from '@windlass/core/basis';

export const POUND: Source = {
  id: 'international-pound',
  citation: 'International yard and pound agreement, 1959: one pound is 0.45359237 kg exactly.',
  standing: 'convention',
};

export const PROJECT_CHOICE: Source = {
  id: 'windlass-convention',
  citation:
    'A choice of this project, from what practitioners agree on. It was not measured and no clinician has reviewed it.',
  standing: 'convention',
};
