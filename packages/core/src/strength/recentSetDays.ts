/**
 * Days before the latest set of a lift that its sets are used for. Over longer stretches loads and
 * strength grow together, which a rep curve takes for poor endurance: on a simulated year of steady
 * gains all sets together put the one-rep max a quarter too high, the last six weeks a tenth.
 */
export const recentSetDays = 42;
