export type { AtHand } from './AtHand.ts';
export { atHandFrom } from './atHandFrom.ts';
export type {
  Area,
  AreaExchange,
  AreaOptions,
  AskFirst,
  Exchange,
  ExchangeOptions,
  ExchangeReason,
  ExchangeSetting,
  LeftOut,
  NothingSuitable,
  Suggestion,
} from './Exchange.ts';
export { exchangeFor } from './exchangeFor.ts';
export { exercisesFor } from './exercisesFor.ts';
export { fullGym } from './fullGym.ts';
export { muscleOverlap } from './muscleOverlap.ts';
export { objectionsTo } from './objectionsTo.ts';
export { type SupportedBodyWeight, supportedBodyWeight } from './supportedBodyWeight.ts';
export { type PushUpForm, supportedShares } from './supportedShares.ts';
