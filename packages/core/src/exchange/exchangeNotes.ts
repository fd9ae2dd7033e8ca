import type { ExchangeReason, ExchangeSetting } from './Exchange.ts';

/** What goes with every list of suggestions. */
export function exchangeNotes({ limits }: ExchangeSetting): readonly ExchangeReason[] {
  const notes: readonly (readonly [boolean, string, string])[] = [
    [
      limits.positions.length > 0,
      'start-lighter',
      'Start lighter than the present load. Pain during a set or after it ends the exercise and is the measure of what fits.',
    ],
    [
      limits.positions.length > 0,
      'harder-without-depth',
      'Light loads become harder by one side at a time, slower lowering, a pause or more repetitions, not by a deeper bend.',
    ],
    [
      limits.painLimit !== undefined,
      'pain-limit',
      `The clinician's limit is ${limits.painLimit} on the pain scale of 0 to 10; above it the step is repeated or undone.`,
    ],
    [
      limits.notAllowed.length > 0,
      'back-with-the-clinician',
      'Going back to what is on the clinician’s list needs the clinician’s word.',
    ],
    [
      limits.handsOutOfUse.length > 0,
      'ask-at-each-phase',
      'Ask the clinician again at each change of cast or splint. The other side trains on as before.',
    ],
  ];
  return notes.flatMap(([applies, code, words]) => (applies ? [{ code, words }] : []));
}
