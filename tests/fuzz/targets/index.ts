import type { Target } from '../Target.ts';
import { backupTargets } from './backupTargets.ts';
import { calculatorTargets } from './calculatorTargets.ts';
import { coreTargets } from './coreTargets.ts';
import { liveSetTargets } from './liveSetTargets.ts';
import { logTargets } from './logTargets.ts';
import { plannerTargets } from './plannerTargets.ts';
import { readerTargets } from './readerTargets.ts';

/** Everything that takes what comes from outside. */
export const targets: readonly Target[] = [
  ...coreTargets,
  ...logTargets,
  ...readerTargets,
  ...plannerTargets,
  ...backupTargets,
  ...liveSetTargets,
  ...calculatorTargets,
];
