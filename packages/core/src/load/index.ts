export { addLoads } from './addLoads.ts';
export { kg } from './kg.ts';
export { type Load, type LoadValue, STEPS_PER_KG, STEPS_PER_LB, type Unit } from './Load.ts';
export { lb } from './lb.ts';
export { loadFromValue } from './loadFromValue.ts';
export { toKg } from './toKg.ts';
export { toLb } from './toLb.ts';
