export { addLoads } from './addLoads.ts';
export { decimalMark } from './decimalMark.ts';
export { type FormatLoadOptions, formatLoad } from './formatLoad.ts';
export { isOnGrid } from './isOnGrid.ts';
export { kg } from './kg.ts';
export {
  LARGEST_LOAD,
  type Load,
  type LoadValue,
  STEPS_PER_KG,
  STEPS_PER_LB,
  type Unit,
} from './Load.ts';
export type { LoadGrid } from './LoadGrid.ts';
export { lb } from './lb.ts';
export { loadFromValue } from './loadFromValue.ts';
export { loadValue } from './loadValue.ts';
export { type ParseLoadOptions, parseLoad } from './parseLoad.ts';
export { type GridRounding, roundToGrid } from './roundToGrid.ts';
export { scaleLoad } from './scaleLoad.ts';
export { subtractLoad } from './subtractLoad.ts';
export { toKg } from './toKg.ts';
export { toLb } from './toLb.ts';
