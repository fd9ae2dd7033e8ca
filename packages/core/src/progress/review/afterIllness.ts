import type { Caution } from '../../safety/index.ts';

/** Before training again after a fever or a chest infection. */
export const afterIllness: Caution = {
  id: 'after-fever-or-chest-infection',
  level: 'caution',
  what: 'There was a fever or a chest infection.',
  why: 'Hard effort while an illness lasts is advised against, and signs from heart or lungs can be taken for poor form.',
  instead:
    'Wait until free of symptoms, then begin lightly. With breathlessness, chest discomfort, palpitations or a known heart disease, ask a physician first.',
  ask: ['physician'],
  sources: [
    {
      id: 'windlass-return-after-illness',
      citation: 'What coaches and clinicians commonly advise; a choice of caution, no measurement',
      standing: 'convention',
    },
  ],
};
