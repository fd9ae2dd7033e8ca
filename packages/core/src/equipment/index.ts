export { type BodyLoad, bodyLoad } from './bodyLoad.ts';
export { changeLoading } from './changeLoading.ts';
export { compareSides, type Sides } from './compareSides.ts';
export { type BarCorrection, correctForBar } from './correctForBar.ts';
export type {
  AdjustableHandles,
  Barbell,
  BodyStation,
  ElasticBand,
  Equipment,
  EquipmentUse,
  FixedWeights,
  Gym,
  MovedShare,
  OnePost,
  PieceStock,
  Plate,
  PlateMachine,
  PlateStock,
  SelectorStack,
} from './Equipment.ts';
export { type EvenSides, evenSides } from './evenSides.ts';
export type { Handling, HandlingStep } from './Handling.ts';
export type { LoadChoice, NearReason, NextLoad, NoChoice } from './LoadChoice.ts';
export type {
  AssistanceLoading,
  Counts,
  EquipmentNote,
  FixedLoading,
  Loading,
  LoadList,
  LoadStanding,
  NoLoads,
  PinLoading,
  PlateLoading,
  PlateStack,
  ReachableLoad,
  ReachableLoads,
  StackPlace,
} from './Loading.ts';
export type { LoadRange } from './LoadRange.ts';
export { nearestAtLeast } from './nearestAtLeast.ts';
export { nearestAtMost } from './nearestAtMost.ts';
export { nearestLoad } from './nearestLoad.ts';
export { nextDown } from './nextDown.ts';
export { nextUp } from './nextUp.ts';
export { reachableLoads } from './reachableLoads.ts';
export type { Bridge, BridgeId, StepSize, StepUp } from './StepSize.ts';
export { stepUp } from './stepUp.ts';
export { type UnevenLoad, type UnevenLoadList, unevenLoads } from './unevenLoads.ts';
export { type LoadWays, waysToLoad } from './waysToLoad.ts';
export { type WeighedLoading, weighLoading } from './weighLoading.ts';
