import type { WayBack } from '../anatomy/index.ts';

/** Seconds with the load off that a forecast counts with. Conventions of this project. */
export const chainTimes = {
  /** To take load off before lifting on. */
  changeSeconds: 5,
  /** From the end of a lowering to the start of the next, by what brings the load back to the top. */
  resetSeconds: {
    'step-up': 4,
    'other-limb': 3,
    'both-limbs': 3,
    'legs-push': 3,
    'hands-push': 3,
    'set-down-and-restart': 10,
    'partner-only': 3,
  },
} as const satisfies {
  readonly changeSeconds: number;
  readonly resetSeconds: Readonly<Record<WayBack, number>>;
};
