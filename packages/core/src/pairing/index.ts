export type { PairExercise, PairForecast, PairInput, PairRefusal } from './Pair.ts';
export { pairRules } from './pairRules.ts';
export { pairPractice, pairSources } from './pairSources.ts';
export { type PlacePair, pairsInOnePlace } from './pairsInOnePlace.ts';
export { type PairPlan, planPair } from './planPair.ts';
