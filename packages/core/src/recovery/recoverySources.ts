import type { Source } from '../basis/index.ts';

/** The 29 rows that the hours were fitted to, as bounds. */
export const recoveryTimeCourse: Source = {
  id: 'recovery_time_course',
  citation:
    'Hours until strength, repetitions or jump height are back, from 24 studies (Ferreira 2017, McLester 2003, Korak 2015, Bartolomei 2017, Pareja-Blanco 2020 and others), read as bounds: last seen impaired, first seen recovered',
  doi: '10.1007/s00421-017-3725-7',
  standing: 'verified',
};

/** Counting helpers as half a set. */
export const pelland2024: Source = {
  id: 'pelland-2024',
  citation:
    'Pelland JC et al. SportRxiv 2024 (67 studies, 2058 people): indirect sets best counted as half; a statistical convention, not a measured share',
  standing: 'verified',
};

/** What a stage past failure costs. */
export const ahtiainen2003: Source = {
  id: 'ahtiainen-2003',
  citation:
    'Ahtiainen JP et al. Int J Sports Med 2003;24(6):410-418: force fell by 56.5 % after sets with forced repetitions and by 38.3 % after sets to failure, and stayed lower for three days',
  doi: '10.1055/s-2003-41171',
  standing: 'verified',
};

/** Which muscles lowering hits hardest. */
export const chen2011: Source = {
  id: 'chen-2011',
  citation:
    'Chen TC et al. Eur J Appl Physiol 2011;111:211-223: after the same lowering work, elbow flexors and extensors were hit hardest, then knee flexors, then knee extensors',
  doi: '10.1007/s00421-010-1648-7',
  standing: 'verified',
};

/** How damage fades as work grows familiar. */
export const damas2016: Source = {
  id: 'damas-2016',
  citation:
    'Damas F et al. J Physiol 2016;594:5209-5222: muscle damage after the same session was highest in week 1, lower in week 3, minimal in week 10',
  doi: '10.1113/JP272472',
  standing: 'verified',
};

/** How far people differ. */
export const mcLester2001: Source = {
  id: 'mclester-2001',
  citation:
    'McLester JR et al. 2001 (abstract): 4 of 10 trained men were back to their repetitions at 48 h, 7 at 72 h, 8 at 96 h, 2 not within 96 h',
  standing: 'verified',
};

/** Short nights. */
export const craven2022: Source = {
  id: 'craven-2022',
  citation:
    'Craven J et al. Sports Med 2022;52:2669-2690: sleep of 6 h or less lowered performance by 7.6 % (95 % CI 3.1 to 11.9); no measure of hours to recover',
  doi: '10.1007/s40279-022-01706-y',
  standing: 'verified',
};

/** Soreness and lost work in the same window. */
export const ferreiraJscr2017: Source = {
  id: 'ferreira-2017-jscr',
  citation:
    'Ferreira DV et al. J Strength Cond Res 2017;31(1):193-200: triceps soreness after pressing was gone by 72 h, as triceps work was back by then',
  doi: '10.1519/JSC.0000000000001453',
  standing: 'verified',
};

/** No clear direction for age. */
export const fernandes2021: Source = {
  id: 'fernandes-2021',
  citation:
    'Fernandes JFT et al. J Aging Phys Act 2021;29(3):544-551: of eleven comparisons of older and younger men, 4 found slower recovery, 2 faster, 6 no difference, as printed',
  standing: 'verified',
};
