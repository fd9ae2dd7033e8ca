import type { Source } from '../basis/index.ts';

export const riebe2015: Source = {
  id: 'riebe-2015',
  citation:
    'Riebe D, Franklin BA, Thompson PD et al. Med Sci Sports Exerc 2015;47(8):2473-2479: screening by current activity, signs or known disease, and desired intensity. The inputs were read; what follows from each is recalled.',
  doi: '10.1249/MSS.0000000000000664',
  standing: 'recalled',
};

export const warburton2011: Source = {
  id: 'warburton-2011',
  citation:
    'Warburton DER, Jamnik VK, Bredin SSD, Gledhill N. Health Fitness J Can 2011;4(2): seven yes-or-no questions first, follow-up for any yes.',
  standing: 'verified',
};

export const acsmGuidelines: Source = {
  id: 'acsm-guidelines',
  citation:
    "ACSM's Guidelines for Exercise Testing and Prescription: signs and symptoms that suggest heart, vessel, metabolic or kidney disease, and signs to stop for.",
  standing: 'recalled',
};

export const garber2011: Source = {
  id: 'garber-2011',
  citation:
    'Garber CE et al. Med Sci Sports Exerc 2011;43(7):1334-1359: moderate resistance effort lies between 50 and 69 % of the one-rep max.',
  doi: '10.1249/MSS.0b013e318213fefb',
  standing: 'recalled',
};

export const paluch2024: Source = {
  id: 'paluch-2024',
  citation:
    'Paluch AE et al. Circulation 2024;149:e217-e231: resistance training for adults with and without cardiovascular disease.',
  doi: '10.1161/CIR.0000000000001189',
  standing: 'verified',
};

export const macDougall1985: Source = {
  id: 'macdougall-1985',
  citation:
    'MacDougall JD et al. J Appl Physiol 1985;58(3):785-790: mean peak 320/250 mmHg on a double leg press to failure, 255/190 on a one-arm curl to failure.',
  doi: '10.1152/jappl.1985.58.3.785',
  standing: 'verified',
};

export const narloch1995: Source = {
  id: 'narloch-1995',
  citation:
    'Narloch JA, Brandstater ME. Arch Phys Med Rehabil 1995;76:457-462: leg press at 100 %, mean 311/284 mmHg with a held breath, 198/175 breathing out.',
  standing: 'verified',
};

export const nery2010: Source = {
  id: 'nery-2010',
  citation:
    'Nery SS et al. Clinics 2010;65(3):271-277: knee extension to exhaustion raised systolic pressure by 80 mmHg at 80 % and by 75 mmHg at 40 % in people with hypertension.',
  standing: 'verified',
};

export const williams2007: Source = {
  id: 'williams-2007',
  citation:
    'Williams MA et al. Circulation 2007;116(5):572-584: uncontrolled hypertension above 180/110 mmHg an absolute, above 160/100 a relative contraindication.',
  standing: 'recalled',
};

export const clarkson2006: Source = {
  id: 'clarkson-2006',
  citation:
    'Clarkson PM et al. Med Sci Sports Exerc 2006;38(4):623-627: 50 maximal lowerings with the elbow flexors took 51 of 203 people above 10,000 U/L of creatine kinase on day 4.',
  doi: '10.1249/01.mss.0000210192.49210.fc',
  standing: 'verified',
};

export const nosaka1996: Source = {
  id: 'nosaka-clarkson-1996',
  citation:
    'Nosaka K, Clarkson PM. Int J Sports Med 1996;17:120-127: 24 maximal lowerings, ten men, peak creatine kinase 236 to 25,244 U/L.',
  standing: 'verified',
};

export const rawson2017: Source = {
  id: 'rawson-2017',
  citation:
    'Rawson ES et al. Sports Med 2017;47(S1):33-49: muscle breakdown after effort is rare; unaccustomed work, heat and exercise as punishment bring it on.',
  standing: 'verified',
};

export const kolber2013: Source = {
  id: 'kolber-2013',
  citation:
    'Kolber MJ et al. J Strength Cond Res 2013;27(5):1333-1339: 123 lifters and 36 controls; behind-the-neck pulldown and press went with signs of instability, external-rotator work with fewer.',
  doi: '10.1519/JSC.0b013e318269f776',
  standing: 'verified',
};

export const kolber2014: Source = {
  id: 'kolber-2014',
  citation:
    'Kolber MJ et al. J Strength Cond Res 2014;28(4):1081-1089: 46 lifters and 31 controls; lateral raises and upright rows above 90 degrees went with signs of impingement, external-rotator work with fewer.',
  standing: 'verified',
};

export const powers2014: Source = {
  id: 'powers-2014',
  citation:
    'Powers CM et al. J Orthop Sports Phys Ther 2014;44(5):320-327: modelled kneecap stress in ten healthy people; higher in the squat at 60, 75 and 90 degrees, in leg extension at 30, 15 and 0.',
  standing: 'verified',
};

export const lucado2022: Source = {
  id: 'elbow-guideline-2022',
  citation:
    'Clinical practice guideline on lateral elbow pain. J Orthop Sports Phys Ther 2022: loading and grip. That it exists was checked; what it says on grip is recalled.',
  doi: '10.2519/jospt.2022.0302',
  standing: 'recalled',
};

export const saraceni2020: Source = {
  id: 'saraceni-2020',
  citation:
    'Saraceni N et al. J Orthop Sports Phys Ther 2020;50(3):121-130: bending the low back while lifting was not linked to the onset or persistence of back pain (1.5 degrees, -0.7 to 3.7; low quality).',
  doi: '10.2519/jospt.2020.9218',
  standing: 'verified',
};

export const lamontagne2009: Source = {
  id: 'lamontagne-2009',
  citation:
    'Lamontagne M, Kennedy MJ, Beaulé PE. Clin Orthop Relat Res 2009;467(3):645-650: 15 people with a cam hip squatted less deep than 11 controls (41.5 against 32.3 % of leg length). The advice drawn from it is recalled.',
  doi: '10.1007/s11999-008-0620-x',
  standing: 'derived',
};

export const acog2020: Source = {
  id: 'acog-804',
  citation:
    'American College of Obstetricians and Gynecologists. Committee Opinion 804. Obstet Gynecol 2020;135(4):e178-e188. That it supports exercise and changes routines where needed was read; its signs to stop for are recalled.',
  doi: '10.1097/AOG.0000000000003772',
  standing: 'recalled',
};

export const faigenbaum2009: Source = {
  id: 'faigenbaum-2009',
  citation:
    'Faigenbaum AD et al. J Strength Cond Res 2009;23(5 Suppl):S60-S79: resistance training suits school-age youth when it is well planned and supervised.',
  standing: 'verified',
};

export const stricker2020: Source = {
  id: 'stricker-2020',
  citation: 'Stricker PR, Faigenbaum AD, McCambridge TM. Pediatrics 2020;145(6):e20201011.',
  standing: 'recalled',
};

export const mcLester2003: Source = {
  id: 'mclester-2003',
  citation:
    'McLester JR et al. J Strength Cond Res 2003;17(2): men of 50 to 65 were back at their repetitions after 48 h but, unlike young men, no better after 72 h.',
  standing: 'recalled',
};

export const projectConvention: Source = {
  id: 'windlass-convention',
  citation:
    'A choice of this project, from what practitioners agree on. It was not measured and no clinician has reviewed it.',
  standing: 'convention',
};
