import { FREE_WEIGHT_ECCENTRIC, MACHINE_ECCENTRIC } from '../eccentricFactors.ts';

/** Ways of loading that many exercises share, each with its eccentric factor. */
export const barbell = { loads: ['barbell'], eccentricFactor: FREE_WEIGHT_ECCENTRIC } as const;

/** Straight bars in one piece do as well. */
export const anyBar = {
  loads: ['barbell', 'fixed'],
  fixedForms: ['barbell'],
  eccentricFactor: FREE_WEIGHT_ECCENTRIC,
} as const;

export const dumbbells = {
  loads: ['fixed', 'handles'],
  eccentricFactor: FREE_WEIGHT_ECCENTRIC,
} as const;

export const dumbbellsOrKettlebells = {
  loads: ['fixed', 'handles'],
  fixedForms: ['dumbbell', 'kettlebell'],
  eccentricFactor: FREE_WEIGHT_ECCENTRIC,
} as const;

export const kettlebell = {
  loads: ['fixed'],
  fixedForms: ['kettlebell'],
  eccentricFactor: FREE_WEIGHT_ECCENTRIC,
} as const;

/** A post or a bar end with plates on one side. */
export const onePost = { loads: ['one-post'], eccentricFactor: FREE_WEIGHT_ECCENTRIC } as const;

export const cableStack = { loads: ['stack'], eccentricFactor: MACHINE_ECCENTRIC } as const;

export const machine = { loads: ['stack', 'machine'], eccentricFactor: MACHINE_ECCENTRIC } as const;

/** Plates on a sled, a lever or a guided bar. */
export const plateMachine = { loads: ['machine'], eccentricFactor: MACHINE_ECCENTRIC } as const;

export const ownBody = { loads: ['body'], eccentricFactor: FREE_WEIGHT_ECCENTRIC } as const;

/** An elastic band. Its pull is not known in advance and shrinks on the way back. */
export const band = { loads: ['band'], eccentricFactor: FREE_WEIGHT_ECCENTRIC } as const;
