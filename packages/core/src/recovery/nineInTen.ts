/** Standard deviations from the middle of a normal distribution to the point nine in ten lie below. */
export const NINE_IN_TEN = 1.2815515655446004;
