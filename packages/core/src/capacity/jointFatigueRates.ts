import type { Source } from '../basis/index.ts';
import type { JointFatigueRates, StudiedJoint } from './FatigueRates.ts';

const sustained: Source = {
  id: 'frey-law-2012',
  citation:
    'Frey-Law LA, Looft JM, Heitsman J. J Biomech 2012;45(10):1803-1808, Table 1: fits to sustained static efforts.',
  doi: '10.1016/j.jbiomech.2012.04.018',
  standing: 'verified',
};
const intermittent: Source = {
  id: 'looft-2018',
  citation: 'Looft JM, Herkert N, Frey-Law L. J Biomech 2018;77:16-25: rest multiplier.',
  doi: '10.1016/j.jbiomech.2018.06.005',
  standing: 'verified',
};
const shoulderAndGrip: Source = {
  id: 'looft-2020',
  citation:
    'Looft JM, Frey-Law LA. J Biomech 2020;106:109762: rest multiplier of shoulder and grip, as cited by others.',
  standing: 'recalled',
};
const usualMultiplier: Source = {
  id: 'rest-multiplier-default',
  citation: 'No rest multiplier was published for this fit; 15 is the value of most joints.',
  standing: 'convention',
};

/**
 * Rates of the three-compartment fatigue model by joint. They were fitted to static efforts, and
 * nothing has tested them on lifting repetitions. The hip was not studied: use `general`.
 */
export const jointFatigueRates: Readonly<Record<StudiedJoint, JointFatigueRates>> = {
  shoulder: {
    fatiguePerSecond: 0.0182,
    recoveryPerSecond: 0.001_68,
    restMultiplier: 15,
    sources: [sustained, shoulderAndGrip],
  },
  elbow: {
    fatiguePerSecond: 0.009_12,
    recoveryPerSecond: 0.000_94,
    restMultiplier: 15,
    sources: [sustained, intermittent],
  },
  knee: {
    fatiguePerSecond: 0.015,
    recoveryPerSecond: 0.001_49,
    restMultiplier: 15,
    sources: [sustained, intermittent],
  },
  ankle: {
    fatiguePerSecond: 0.005_89,
    recoveryPerSecond: 0.000_58,
    restMultiplier: 15,
    sources: [sustained, intermittent],
  },
  trunk: {
    fatiguePerSecond: 0.007_55,
    recoveryPerSecond: 0.000_75,
    restMultiplier: 15,
    sources: [sustained, usualMultiplier],
  },
  grip: {
    fatiguePerSecond: 0.0098,
    recoveryPerSecond: 0.000_64,
    restMultiplier: 30,
    sources: [sustained, shoulderAndGrip],
  },
  general: {
    fatiguePerSecond: 0.0097,
    recoveryPerSecond: 0.000_91,
    restMultiplier: 15,
    sources: [sustained, usualMultiplier],
  },
};
