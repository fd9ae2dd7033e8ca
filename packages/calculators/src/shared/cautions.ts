import type { Caution } from '@windlass/core/safety';
import { PROJECT_CHOICE } from './sources.ts';

/*
 * Two cautions that apply to any set to failure, whoever lifts. All rules about a person are in
 * `@windlass/core/safety`, which needs answers that these forms do not ask for.
 */

export const NOBODY_THERE: Caution = {
  id: 'alone',
  level: 'caution',
  what: 'To failure, and nobody is there.',
  why: 'A load above the body that cannot be lifted again has to be caught by something.',
  instead:
    'Take a lift that can be left at any point, or set stops and try them with the empty bar; with a free bar above the body keep one or two reps in reserve.',
  ask: [],
  sources: [PROJECT_CHOICE],
};

export const HEALTH_NOT_ASKED: Caution = {
  id: 'health-not-asked',
  level: 'note',
  what: 'This page asks nothing about health.',
  why: 'Signs of heart disease, raised blood pressure, pregnancy, a complaint or age under 18 change what may be planned, and who has to agree first.',
  instead: 'Ask about them before the first hard session.',
  ask: ['coach', 'physician'],
  sources: [
    {
      id: 'riebe-2015',
      citation:
        'Riebe D, Franklin BA, Thompson PD et al. Med Sci Sports Exerc 2015;47(8):2473-2479: screening by activity, signs or known disease, and intensity.',
      doi: '10.1249/MSS.0000000000000664',
      standing: 'recalled',
    },
  ],
};
