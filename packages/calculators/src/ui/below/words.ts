/** What is said below an answer, and is fetched with it: headings, buttons, standing of sources. */
export const below = {
  why: 'Why',
  cautions: 'Before you load it',
  sources: 'What it rests on',
  snippet: 'The same in TypeScript',
  copyCode: 'Copy the code',
  copyLink: 'Copy link',
  copied: 'Copied.',
  copyByHand: 'Copying is blocked here. Select it by hand:',
  print: 'Print',
  standing: {
    verified: 'read in the publication',
    recalled: 'recalled, counts for nothing by itself',
    derived: 'computed from published rows',
    convention: 'a convention, not a measurement',
  },
  unknown: (names: string) =>
    `The address also carries ${names}, which this calculator does not know. It is kept, and changes nothing here.`,
} as const;
