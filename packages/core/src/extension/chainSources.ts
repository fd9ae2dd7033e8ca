import type { Source } from '../basis/index.ts';

export const giessing: Source = {
  id: 'forced-rep-assistance',
  citation:
    'Giessing J, Steele J, Fisher J. Forced repetitions study (preprint, open data, n = 37, bench press at 10 to 12 RM): peak help 19 % of the load (median) on the first repetition after failure, 33 % on the second.',
  standing: 'verified',
};

export const ahtiainen: Source = {
  id: 'ahtiainen-2003',
  citation:
    'Ahtiainen JP et al. Int J Sports Med 2003;24(6):410-418: isometric force fell by 56.5 % after sets with forced repetitions and by 38.3 % after sets to failure; lower for three days.',
  doi: '10.1055/s-2003-41171',
  standing: 'verified',
};

export const pastFailurePractice: Source = {
  id: 'past-failure-practice',
  citation:
    'Order of stages, their number and the four-second test for control in lowering: training practice, written down by this project.',
  standing: 'convention',
};

export const eccentricRatio: Source = {
  id: 'ecc-con-1rm',
  citation:
    'Hollander DB et al. J Strength Cond Res 2007;21(1):34-40; Kelly SB et al. J Strength Cond Res 2015;29(4):1027-1032; Shibata K et al. J Strength Cond Res 2025;39(5):515-522: lowering against lifting one-rep max 1.24 to 1.32 with free weights, 1.27 to 1.49 on machines (men).',
  doi: '10.1519/JSC.0000000000000713',
  standing: 'verified',
};

export const isometricRatio: Source = {
  id: 'iso-con',
  citation:
    'BMC Sports Sci Med Rehabil 2022;14 (18 men, lower limb): isometric strength at the best angle 1.29 times lifting strength at 60 degrees a second. At the angle where a lift fails it is a free parameter between 1 and the lowering ratio.',
  doi: '10.1186/s13102-022-00401-9',
  standing: 'derived',
};

export const heldAndLowered: Source = {
  id: 'held-and-lowered',
  citation:
    'Frey-Law LA, Looft JM, Heitsman J. J Biomech 2012;45(10):1803-1808: fatigue and recovery rates of static efforts; nothing has tested them on lifting repetitions.',
  doi: '10.1016/j.jbiomech.2012.04.018',
  standing: 'verified',
};
