/** Every word about kept people and gyms in the planner. */
export const words = {
  client: {
    label: 'Kept person',
    none: 'Nobody: only in this plan',
    keep: 'Keep person',
    save: 'Save changes',
  },
  gym: {
    label: 'Kept gym',
    none: 'None: only in this plan',
    keep: 'Keep gym',
    save: 'Save changes',
  },
  isKept: 'Kept',
  kept: (name: string) => `${name} is kept in this browser.`,
  wrong: (why: string) => `Not kept yet. ${why}`,
  changedElsewhere: (name: string) =>
    `${name} was changed in another tab, and nothing was overwritten. Save once more to put this in its place.`,
  removedElsewhere: (name: string) =>
    `${name} was deleted in another tab. Keep it anew if it is still wanted.`,
  notHere:
    'What this address asks for is not kept in this browser. An example stands here instead.',
} as const;
